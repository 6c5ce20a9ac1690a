// SPDX-License-Identifier: Apache-2.0
package gelfront;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.PrintStream;
import java.util.List;
import java.util.Set;

/** The house rules of DEVELOPERS.md that Maven's modules don't hold. */
@AnalyzeClasses(
    packages = "gelfront",
    importOptions = {DoNotIncludeTests.class, LayersTest.NoTestJars.class})
final class LayersTest {
  /** Without what the tests of {@code meshes} lend to other modules' tests. */
  static final class NoTestJars implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("-tests.jar");
    }
  }

  /** From the ground up: a package uses only packages before it. */
  private static final List<String> ORDER =
      List.of(
          "base",
          "material",
          "grid",
          "setup",
          "voxelize",
          "state",
          "finding",
          "answer",
          "linear",
          "heat",
          "feed",
          "fill",
          "dent",
          "verdict",
          "result",
          "run",
          "study",
          "doubt",
          "calibrate",
          "live",
          "timing",
          "report",
          "cli");

  private static final Set<String> MAY_TOUCH_FILES =
      Set.of("mesh", "material", "setup", "result", "report", "cli");

  private static final Set<String> REPORT_READS =
      Set.of("report", "result", "finding", "answer", "material", "base", "mesh");

  @ArchTest
  static final ArchRule packagesUseOnlyPackagesBelow = classes().should(useOnlyPackagesBelow());

  @ArchTest
  static final ArchRule heatDoesNotKnowFeed =
      noClasses().that(are("heat")).should().dependOnClassesThat(are("feed"));

  @ArchTest
  static final ArchRule feedDoesNotKnowHeat =
      noClasses().that(are("feed")).should().dependOnClassesThat(are("heat"));

  @ArchTest
  static final ArchRule meshesKnowNothingOfTheSimulator =
      noClasses()
          .that(are("mesh"))
          .should()
          .dependOnClassesThat(
              ours("a package of the simulator", name -> !name.equals("mesh") && !name.isEmpty()));

  @ArchTest
  static final ArchRule reportsAreMadeFromResultsAlone =
      noClasses()
          .that(are("report"))
          .should()
          .dependOnClassesThat(
              ours("a package that reports don't read", name -> !REPORT_READS.contains(name)));

  @ArchTest
  static final ArchRule onlySomeTouchFiles =
      noClasses()
          .that(ours("not among " + MAY_TOUCH_FILES, name -> !MAY_TOUCH_FILES.contains(name)))
          .should()
          .dependOnClassesThat(touchesFiles());

  @ArchTest
  static final ArchRule onlyTheCommandLinePrints =
      noClasses()
          .that(ours("outside cli", name -> !name.equals("cli")))
          .should()
          .accessTargetWhere(console());

  @ArchTest
  static final ArchRule noMutableStatics =
      fields().that().areStatic().should(beFinal()).andShould(notBeArraysOthersCanSee());

  @ArchTest
  static final ArchRule noThreadsOfTheirOwn =
      noClasses()
          .that(ours("outside cli and result", name -> !Set.of("cli", "result").contains(name)))
          .should()
          .accessTargetWhere(startsThreads());

  /** The package's name after "gelfront.", without sub-packages; empty for classes of others. */
  private static String packageOf(JavaClass c) {
    String[] parts = c.getPackageName().split("\\.", -1);
    return parts.length > 1 && parts[0].equals("gelfront") ? parts[1] : "";
  }

  private static DescribedPredicate<JavaClass> are(String name) {
    return ours("in gelfront." + name, name::equals);
  }

  private static DescribedPredicate<JavaClass> ours(
      String words, java.util.function.Predicate<String> names) {
    return DescribedPredicate.describe(
        words, c -> c.getPackageName().startsWith("gelfront") && names.test(packageOf(c)));
  }

  private static ArchCondition<JavaClass> useOnlyPackagesBelow() {
    return new ArchCondition<>("use only packages below their own") {
      @Override
      public void check(JavaClass c, ConditionEvents events) {
        String from = packageOf(c);
        if (from.equals("mesh")) {
          return;
        }
        if (!ORDER.contains(from)) {
          events.add(
              SimpleConditionEvent.violated(c, c.getName() + " is in a package without a place"));
        }
        c.getDirectDependenciesFromSelf().stream()
            .filter(d -> ORDER.indexOf(packageOf(d.getTargetClass())) > ORDER.indexOf(from))
            .forEach(d -> events.add(SimpleConditionEvent.violated(d, d.getDescription())));
      }
    };
  }

  /** A path may be carried in a record; only its keepers open it. */
  private static DescribedPredicate<JavaClass> touchesFiles() {
    return DescribedPredicate.describe(
        "touching files",
        c ->
            (c.getPackageName().startsWith("java.nio.file") && !c.getSimpleName().equals("Path"))
                || Set.of("java.io.File", "java.io.FileInputStream", "java.io.FileOutputStream")
                    .contains(c.getName())
                || c.getName().startsWith("java.io.RandomAccess"));
  }

  private static DescribedPredicate<JavaAccess<?>> console() {
    return DescribedPredicate.describe(
        "the console or the end of the process",
        access -> {
          String owner = access.getTargetOwner().getName();
          String name = access.getTarget().getName();
          return (owner.equals(System.class.getName())
                  && Set.of("out", "err", "in", "exit", "console").contains(name))
              || (owner.equals(Runtime.class.getName()) && Set.of("exit", "halt").contains(name))
              || (access.getTargetOwner().isAssignableTo(Throwable.class)
                  && name.equals("printStackTrace"))
              || (owner.equals(PrintStream.class.getName()) && name.startsWith("print"));
        });
  }

  private static DescribedPredicate<JavaAccess<?>> startsThreads() {
    return DescribedPredicate.describe(
        "threads other than from an executor that was passed in",
        access ->
            (access.getTargetOwner().isAssignableTo(Thread.class)
                    && Set.of("<init>", "start").contains(access.getTarget().getName()))
                || access.getTargetOwner().getName().equals("java.util.concurrent.Executors")
                || access.getTarget().getName().equals("parallel")
                || access.getTarget().getName().equals("parallelStream"));
  }

  private static ArchCondition<JavaField> beFinal() {
    return new ArchCondition<>("be final") {
      @Override
      public void check(JavaField field, ConditionEvents events) {
        boolean madeByCompiler = field.getModifiers().contains(JavaModifier.SYNTHETIC);
        if (!madeByCompiler && !field.getModifiers().contains(JavaModifier.FINAL)) {
          events.add(SimpleConditionEvent.violated(field, field.getFullName() + " can change"));
        }
      }
    };
  }

  private static ArchCondition<JavaField> notBeArraysOthersCanSee() {
    return new ArchCondition<>("not be arrays that others can write to") {
      @Override
      public void check(JavaField field, ConditionEvents events) {
        boolean hidden =
            field.getModifiers().contains(JavaModifier.PRIVATE)
                || field.getModifiers().contains(JavaModifier.SYNTHETIC);
        if (field.getRawType().isArray() && !hidden) {
          events.add(
              SimpleConditionEvent.violated(field, field.getFullName() + " is a shared array"));
        }
      }
    };
  }
}
