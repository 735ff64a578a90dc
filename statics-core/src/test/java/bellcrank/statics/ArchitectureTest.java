package bellcrank.statics;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Unit;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.stream.Stream;

/** The shape of the library: layers, what may leak, what is never done. */
@AnalyzeClasses(
    packages = "bellcrank.statics",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String GEOMETRY = "bellcrank.statics.geometry..";
  private static final String UNITS = "bellcrank.statics.units..";
  private static final String DEVICE = "bellcrank.statics.device..";
  private static final String EQUILIBRIUM = "bellcrank.statics.equilibrium..";
  private static final String GROUND = "bellcrank.statics.ground..";
  private static final String LIMITS = "bellcrank.statics.limits..";
  private static final String MOTION = "bellcrank.statics.motion..";
  private static final String STRENGTH = "bellcrank.statics.strength..";
  private static final String STUDY = "bellcrank.statics.study..";
  private static final String DRAWING = "bellcrank.statics.drawing..";
  private static final String EXPLAIN = "bellcrank.statics.explain..";
  private static final String HARNESS = "bellcrank.statics.harness..";

  private static final DescribedPredicate<JavaClass> EXPORTED =
      describe(
          "exported",
          one ->
              one.getModifiers().contains(JavaModifier.PUBLIC)
                  && !one.getPackageName().contains(".internal"));

  /** A rule that sees no classes would hold for ever. */
  @ArchTest
  static void theImporterSawTheLibrary(JavaClasses classes) {
    for (Class<?> known : new Class<?>[] {Point.class, Unit.class, Device.class, Balance.class}) {
      assertThat(classes.contain(known)).as(known.getName()).isTrue();
    }
    assertThat(classes.contain("bellcrank.statics.equilibrium.internal.Assembly")).isTrue();
    assertThat(classes.stream().filter(EXPORTED).count()).isGreaterThan(50);
    assertThat(classes.contain(ArchitectureTest.class)).as("tests are not looked at").isFalse();
  }

  @ArchTest
  static final ArchRule geometryStandsAlone =
      noClasses()
          .that()
          .resideInAPackage(GEOMETRY)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              UNITS, DEVICE, EQUILIBRIUM, GROUND, LIMITS, MOTION, STRENGTH, EXPLAIN);

  @ArchTest
  static final ArchRule unitsUseGeometryAtMost =
      noClasses()
          .that()
          .resideInAPackage(UNITS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(DEVICE, EQUILIBRIUM, GROUND, LIMITS, MOTION, STRENGTH, EXPLAIN);

  @ArchTest
  static final ArchRule theModelDoesNotSolve =
      noClasses()
          .that()
          .resideInAPackage(DEVICE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              EQUILIBRIUM,
              GROUND,
              LIMITS,
              MOTION,
              STRENGTH,
              EXPLAIN,
              "org.ejml..",
              "org.hipparchus..");

  @ArchTest
  static final ArchRule equilibriumNeverAsksALinearProgram =
      noClasses()
          .that()
          .resideInAPackage(EQUILIBRIUM)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(GROUND, LIMITS, MOTION, STRENGTH, EXPLAIN, "org.hipparchus..");

  @ArchTest
  static final ArchRule groundDecidesNothing =
      noClasses()
          .that()
          .resideInAPackage(GROUND)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(LIMITS, MOTION, STRENGTH, EXPLAIN, "org.ejml..", "org.hipparchus..");

  @ArchTest
  static final ArchRule programsAndRootsAreSolvedInside =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "..limits.internal..",
              "..motion.internal..",
              "..strength.internal..",
              "..study.internal..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.hipparchus..");

  @ArchTest
  static final ArchRule limitsKnowNothingOfMotion =
      noClasses()
          .that()
          .resideInAPackage(LIMITS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(MOTION, STRENGTH);

  @ArchTest
  static final ArchRule motionKnowsNothingOfStrength =
      noClasses()
          .that()
          .resideInAPackage(MOTION)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(STRENGTH);

  @ArchTest
  static final ArchRule drawingsShowWhatBalancesAndChecksFound =
      noClasses()
          .that()
          .resideInAPackage(DRAWING)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(LIMITS, MOTION, "..internal..", "java.awt..");

  @ArchTest
  static final ArchRule studiesComeLast =
      noClasses()
          .that()
          .resideOutsideOfPackage(STUDY)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(STUDY);

  @ArchTest
  static final ArchRule studiesAskWhatTheLayersBelowAnswer =
      noClasses()
          .that()
          .resideInAPackage(STUDY)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(DRAWING, EXPLAIN);

  @ArchTest
  static final ArchRule onlyTheHarnessNeedsDrawings =
      noClasses()
          .that()
          .resideOutsideOfPackages(DRAWING, HARNESS)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(DRAWING);

  @ArchTest
  static final ArchRule nothingNeedsTheHarness =
      noClasses()
          .that()
          .resideOutsideOfPackage(HARNESS)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(HARNESS);

  @ArchTest
  static final ArchRule theHarnessReadsWhatAnybodyMayRead =
      noClasses()
          .that()
          .resideInAPackage(HARNESS)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("..internal..");

  /** They are optional dependencies: whoever uses the other packages does without them. */
  @ArchTest
  static final ArchRule testLibrariesStayInTheHarness =
      noClasses()
          .that()
          .resideOutsideOfPackage(HARNESS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.assertj..", "org.junit..");

  @ArchTest
  static final ArchRule whatApplicationsUseOfTheHarnessDoesWithoutTestLibraries =
      noClasses()
          .that()
          .resideInAPackage(HARNESS)
          .and()
          .haveNameMatching(".*\\.(ExpectedAnswer|CheckedAnswer|LoadScale|SuiteReader|SuiteFile).*")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.assertj..", "org.junit..");

  @ArchTest
  static final ArchRule onlyPicturesAndPagesAreWrittenAsXml =
      noClasses()
          .that()
          .resideOutsideOfPackages(DRAWING, EXPLAIN)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("javax.xml..");

  @ArchTest
  static final ArchRule explanationsReadWhatAnybodyMayRead =
      noClasses()
          .that()
          .resideInAPackage(EXPLAIN)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(MOTION, STRENGTH, DRAWING, "..internal..");

  @ArchTest
  static final ArchRule motionExplainsNothing =
      noClasses()
          .that()
          .resideInAnyPackage(LIMITS, MOTION, STRENGTH)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(EXPLAIN);

  @ArchTest
  static final ArchRule internalsKnowNothingOfTheirUsers =
      noClasses()
          .that()
          .resideInAPackage("..equilibrium.internal..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("bellcrank.statics.equilibrium");

  @ArchTest
  static final ArchRule packagesDependOneWay =
      slices().matching("bellcrank.statics.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule matrixLibraryStaysInside =
      noClasses()
          .that()
          .resideOutsideOfPackage("..internal..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.ejml..");

  @ArchTest
  static final ArchRule onlyKnownLibraries =
      classes()
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "bellcrank.statics..",
              "java..",
              "javax.xml.stream..",
              "org.assertj.core..",
              "org.ejml..",
              "org.hipparchus..",
              "org.jspecify..",
              "org.junit.jupiter.api..");

  @ArchTest
  static final ArchRule exportedSignaturesShowNoArrayAndNoInternals =
      methods()
          .that()
          .areDeclaredInClassesThat(EXPORTED)
          .and()
          .arePublic()
          .and(isNotOfEnum())
          .should(showOnly());

  @ArchTest
  static final ArchRule exportedTypesHaveNoPublicState =
      noFields()
          .that()
          .areDeclaredInClassesThat(EXPORTED)
          .and()
          .areNotFinal()
          .should()
          .bePublic()
          .orShould()
          .beProtected();

  @ArchTest
  static final ArchRule nothingIsSetAfterwards =
      noMethods().that().areDeclaredInClassesThat(EXPORTED).should().haveNameMatching("set[A-Z].*");

  @ArchTest
  static final ArchRule exportedClassesAreFinal =
      classes()
          .that(EXPORTED)
          .and()
          .areNotInterfaces()
          .and()
          .areNotEnums()
          .should()
          .haveModifier(JavaModifier.FINAL);

  @ArchTest
  static final ArchRule theLibraryNeverPrintsNorLogs =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.util.logging..", "org.slf4j..")
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  @ArchTest
  static final ArchRule neitherClockNorChance =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.util.Random");

  @ArchTest
  static final ArchRule noCatchAllNames =
      noClasses()
          .should()
          .haveSimpleNameEndingWith("Util")
          .orShould()
          .haveSimpleNameEndingWith("Utils")
          .orShould()
          .haveSimpleNameEndingWith("Helper")
          .orShould()
          .haveSimpleNameEndingWith("Manager")
          .orShould()
          .haveSimpleNameEndingWith("Common")
          .orShould()
          .haveSimpleNameEndingWith("Impl")
          .orShould(resideIn(resideInAPackage("..util..").or(resideInAPackage("..common.."))));

  private static ArchCondition<JavaClass> resideIn(DescribedPredicate<? super JavaClass> place) {
    return new ArchCondition<>("reside in " + place.getDescription()) {
      @Override
      public void check(JavaClass one, ConditionEvents events) {
        boolean there = one.getPackageName().startsWith("bellcrank") && place.test(one);
        events.add(new SimpleConditionEvent(one, there, one.getFullName()));
      }
    };
  }

  /** An enum's own {@code values()} is an array that the language makes. */
  private static DescribedPredicate<JavaMember> isNotOfEnum() {
    return describe(
        "not made for an enum",
        one -> !(one.getOwner().isEnum() && one.getName().matches("values|\\$values")));
  }

  /** Varargs come in as arrays, but none goes out. */
  private static ArchCondition<JavaCodeUnit> showOnly() {
    return new ArchCondition<>("return no array and show no internal or library type") {
      @Override
      public void check(JavaCodeUnit unit, ConditionEvents events) {
        JavaClass returned = unit.getRawReturnType();
        boolean varargs =
            unit.reflect() instanceof java.lang.reflect.Method method && method.isVarArgs();
        boolean arrays =
            returned.isArray()
                || (!varargs && unit.getRawParameterTypes().stream().anyMatch(JavaClass::isArray));
        boolean inner =
            Stream.concat(Stream.of(returned), unit.getRawParameterTypes().stream())
                .map(JavaClass::getPackageName)
                .anyMatch(name -> name.contains(".internal") || name.startsWith("org.ejml"));
        if (arrays || inner) {
          events.add(SimpleConditionEvent.violated(unit, unit.getFullName()));
        }
      }
    };
  }
}
