package bellcrank.shipped;

import java.lang.reflect.Constructor;
import java.lang.reflect.Member;
import java.lang.reflect.Modifier;
import java.util.stream.Stream;

/** What a program of a user can see and do. */
final class Visible {

  private Visible() {}

  /** Whether a type can be named from outside. */
  static boolean isSeen(Class<?> type) {
    for (Class<?> outer = type; outer != null; outer = outer.getEnclosingClass()) {
      if (outer.isAnonymousClass() || outer.isLocalClass() || !isOpen(outer.getModifiers())) {
        return false;
      }
    }
    return true;
  }

  /** Whether a member can be used from outside; protected ones only where the type is extended. */
  static boolean isSeen(Member member, Class<?> type) {
    return !member.isSynthetic()
        && (Modifier.isPublic(member.getModifiers())
            || (Modifier.isProtected(member.getModifiers()) && mayBeExtended(type)));
  }

  /** Whether programs may have types of their own below this one. */
  static boolean mayBeExtended(Class<?> type) {
    if (Modifier.isFinal(type.getModifiers()) || type.isSealed() || type.isEnum()) {
      return false;
    }
    return type.isInterface()
        || Stream.of(type.getDeclaredConstructors())
            .map(Constructor::getModifiers)
            .anyMatch(Visible::isOpen);
  }

  private static boolean isOpen(int modifiers) {
    return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
  }
}
