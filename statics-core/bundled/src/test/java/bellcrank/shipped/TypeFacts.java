package bellcrank.shipped;

import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The facts about one type. They are chosen so that a compatible change only adds some: instead of
 * "final" it says that a type may be extended, and what one has to write who does so.
 */
final class TypeFacts {

  private final Class<?> type;
  private final Set<String> facts = new TreeSet<>();

  private TypeFacts(Class<?> type) {
    this.type = type;
  }

  /** All facts about a type. */
  static Set<String> of(Class<?> type) {
    TypeFacts reader = new TypeFacts(type);
    reader.kind();
    reader.supertypes();
    reader.members();
    if (Visible.mayBeExtended(type)) {
      reader.below();
    }
    return reader.facts;
  }

  private void kind() {
    String kind =
        type.isRecord()
            ? "record"
            : type.isEnum() ? "enum" : type.isInterface() ? "interface" : "class";
    facts.add(("is: " + kind + " " + variables(type.getTypeParameters())).strip());
    if (!Modifier.isAbstract(type.getModifiers())) {
      facts.add("is not abstract");
    }
    if (type.isRecord()) {
      facts.add(
          Stream.of(type.getRecordComponents())
              .map(part -> named(part.getAnnotatedType()) + " " + part.getName())
              .collect(Collectors.joining(", ", "taken apart: (", ")")));
    }
  }

  private void supertypes() {
    for (Type above : type.getGenericInterfaces()) {
      facts.add("is also: " + plain(above.getTypeName()));
    }
    for (Class<?> above : above(type)) {
      facts.add("is also: " + above.getTypeName());
    }
  }

  private static Set<Class<?>> above(Class<?> type) {
    Set<Class<?>> above = new LinkedHashSet<>();
    Stream.concat(Stream.ofNullable(type.getSuperclass()), Stream.of(type.getInterfaces()))
        .forEach(
            one -> {
              if (Visible.isSeen(one) && one != Object.class) {
                above.add(one);
              }
              above.addAll(above(one));
            });
    return above;
  }

  private void members() {
    for (Constructor<?> constructor : type.getDeclaredConstructors()) {
      if (Visible.isSeen(constructor, type)) {
        facts.add("new " + parameters(constructor));
      }
    }
    for (Method method : methods()) {
      facts.add(signature(method));
    }
    for (Class<?> owner = type; ours(owner); owner = owner.getSuperclass()) {
      for (Field field : owner.getDeclaredFields()) {
        if (Visible.isSeen(field, type)) {
          facts.add(
              (Modifier.isStatic(field.getModifiers()) ? "static " : "")
                  + (Modifier.isFinal(field.getModifiers()) ? "" : "settable ")
                  + named(field.getAnnotatedType())
                  + " "
                  + field.getName());
        }
      }
    }
  }

  /** Who extends or implements the type must write the one and may write the other. */
  private void below() {
    facts.add("may be extended");
    facts.add(
        methods().stream()
            .filter(method -> Modifier.isAbstract(method.getModifiers()))
            .map(TypeFacts::signature)
            .sorted()
            .collect(Collectors.joining("; ", "extended by writing: ", "")));
    methods().stream()
        .filter(method -> (method.getModifiers() & (Modifier.FINAL | Modifier.STATIC)) == 0)
        .forEach(method -> facts.add("may override: " + signature(method)));
  }

  private Set<Method> methods() {
    Set<Method> methods = new LinkedHashSet<>();
    for (Class<?> owner = type; ours(owner); owner = owner.getSuperclass()) {
      for (Method method : owner.getDeclaredMethods()) {
        if (Visible.isSeen(method, type) && !everyObjectHas(method)) {
          methods.add(method);
        }
      }
    }
    for (Method method : type.getMethods()) {
      if (ours(method.getDeclaringClass()) && !method.isSynthetic() && !everyObjectHas(method)) {
        methods.add(method);
      }
    }
    return methods;
  }

  private static boolean everyObjectHas(Method method) {
    return Stream.of(Object.class.getMethods())
        .anyMatch(
            one ->
                one.getName().equals(method.getName())
                    && Arrays.equals(one.getParameterTypes(), method.getParameterTypes()));
  }

  private static boolean ours(Class<?> type) {
    return type != null && type.getName().startsWith("bellcrank.");
  }

  private static String signature(Method method) {
    return (Modifier.isStatic(method.getModifiers()) ? "static " : "")
        + variables(method.getTypeParameters())
        + named(method.getAnnotatedReturnType())
        + " "
        + method.getName()
        + parameters(method);
  }

  private static String parameters(Executable executable) {
    AnnotatedType[] types = executable.getAnnotatedParameterTypes();
    String list =
        Stream.of(types).map(TypeFacts::named).collect(Collectors.joining(", ", "(", ")"));
    if (executable.isVarArgs()) {
      list = list.substring(0, list.length() - 3) + "...)";
    }
    String thrown =
        Arrays.stream(executable.getExceptionTypes())
            .map(Class::getTypeName)
            .sorted()
            .collect(Collectors.joining(", "));
    return thrown.isEmpty() ? list : list + " throws " + thrown;
  }

  private static String variables(TypeVariable<?>[] variables) {
    return variables.length == 0
        ? ""
        : Stream.of(variables)
            .map(
                variable ->
                    variable.getName()
                        + " extends "
                        + Stream.of(variable.getAnnotatedBounds())
                            .map(TypeFacts::named)
                            .collect(Collectors.joining(" & ")))
            .collect(Collectors.joining(", ", "<", "> "));
  }

  /** A type with what is said about null. */
  private static String named(AnnotatedType type) {
    return plain(type.toString());
  }

  /** Leaves out packages that everybody knows. */
  private static String plain(String name) {
    return name.replace("@org.jspecify.annotations.Nullable()", "@Nullable")
        .replaceAll("\\bjava\\.(lang|util|util\\.function|util\\.stream)\\.(?=[A-Z@])", "");
  }
}
