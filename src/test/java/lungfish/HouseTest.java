package lungfish;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;

/** Holds the one direction: who may know whom is a list, and everything not on it is forbidden. */
@AnalyzeClasses(packages = "lungfish", importOptions = ImportOption.DoNotIncludeTests.class)
final class HouseTest {
    /** Each package and those it may import; the order is from the cellar up. */
    private static final Map<String, Set<String>> MAY_KNOW = mayKnow();

    private static Map<String, Set<String>> mayKnow() {
        Map<String, Set<String>> house = new LinkedHashMap<>();
        house.put("quantity", Set.of());
        house.put("reason", Set.of("quantity"));
        house.put("json", Set.of());
        house.put("catalogue", Set.of("quantity", "reason"));
        house.put("room", Set.of("quantity", "reason", "catalogue"));
        house.put("edit", Set.of("quantity", "reason", "catalogue", "room"));
        house.put("roomfile", Set.of("json", "quantity", "reason", "catalogue", "room"));
        house.put("air", Set.of());
        house.put("network", Set.of("air"));
        house.put("networkfile", Set.of("json", "air", "network"));
        house.put("blower", Set.of("quantity", "reason", "catalogue", "room", "air", "network"));
        house.put("demand", Set.of("quantity", "reason", "catalogue", "room", "air"));
        house.put("piping", Set.of("quantity", "reason", "catalogue", "room", "air", "network", "blower", "demand"));
        house.put(
                "siphon",
                Set.of("quantity", "reason", "catalogue", "room", "air", "network", "blower", "demand", "piping"));
        house.put("sizing", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("noise", Set.of("quantity", "reason", "catalogue", "room", "air", "blower"));
        house.put("backup", Set.of("quantity", "reason", "catalogue", "room", "air"));
        house.put("standing", Set.of("quantity", "reason", "catalogue", "room", "backup"));
        house.put("oxygen", Set.of("quantity", "reason", "catalogue", "room", "air", "demand"));
        house.put("cost", Set.of("quantity", "reason", "catalogue", "room"));
        house.put("headroom", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("plan", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("today", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("everyday", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("choice", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("growth", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("sure", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("outage", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("rescue", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("build", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("commissioning", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("measured", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("logbook", everythingBefore(house, "json", "roomfile", "networkfile"));
        house.put("document", Set.of("quantity", "reason", "catalogue", "room"));
        house.put("drawing", everythingBefore(house, "json", "roomfile", "networkfile", "edit"));
        house.put("report", everythingBefore(house, "roomfile", "networkfile"));
        house.put("print", everythingBefore(house, "json", "roomfile", "networkfile", "edit"));
        house.put("web", everythingBefore(house, "json", "roomfile", "networkfile", "edit"));
        house.put("terminal", everythingBefore(house));
        house.put("desk", everythingBefore(house, "networkfile", "drawing", "report", "print", "web", "terminal"));
        house.put("desktop", everythingBefore(house, "networkfile", "terminal"));
        return house;
    }

    private static Set<String> everythingBefore(Map<String, Set<String>> house, String... but) {
        Set<String> before = new TreeSet<>(house.keySet());
        before.removeAll(Set.of(but));
        return before;
    }

    @ArchTest
    static void importsFollowTheList(JavaClasses classes) {
        MAY_KNOW.forEach((name, known) -> {
            Set<String> forbidden = new TreeSet<>(MAY_KNOW.keySet());
            forbidden.removeAll(known);
            forbidden.remove(name);
            noClasses()
                    .that()
                    .resideInAPackage("lungfish." + name + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(forbidden.stream()
                            .map(other -> "lungfish." + other + "..")
                            .toArray(String[]::new))
                    .because(name + " may know only " + known)
                    .check(classes);
        });
    }

    @ArchTest
    static void everyPackageHasItsPlace(JavaClasses classes) {
        assertThat(classes.getPackage("lungfish").getSubpackages())
                .extracting(JavaPackage::getRelativeName)
                .containsExactlyInAnyOrderElementsOf(MAY_KNOW.keySet());
    }

    @ArchTest
    static void everyPackageTellsItsJob(JavaClasses classes) {
        assertThat(classes.getPackage("lungfish").getSubpackagesInTree())
                .allMatch(each -> each.isAnnotatedWith(NullMarked.class), "has a package-info.java with @NullMarked");
    }

    @ArchTest
    static final ArchRule packagesFormNoCircle =
            slices().matching("lungfish.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyTheWindowKnowsSwing = noClasses()
            .that()
            .resideInAPackage("lungfish.*..")
            .and()
            .resideOutsideOfPackage("lungfish.desktop..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "com.formdev..");

    @ArchTest
    static final ArchRule onlyDrawingPrintWebAndWindowKnowAScreen = noClasses()
            .that()
            .resideInAPackage("lungfish.*..")
            .and()
            .resideOutsideOfPackages("lungfish.desktop..", "lungfish.drawing..", "lungfish.print..", "lungfish.web..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..");

    @ArchTest
    static final ArchRule onlyPrintKnowsPdf = noClasses()
            .that()
            .resideInAPackage("lungfish.*..")
            .and()
            .resideOutsideOfPackage("lungfish.print..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.pdfbox..", "de.rototor..");

    private static final String[] ENGINES = {
        "lungfish.quantity..",
        "lungfish.reason..",
        "lungfish.room..",
        "lungfish.edit..",
        "lungfish.air..",
        "lungfish.network..",
        "lungfish.blower..",
        "lungfish.demand..",
        "lungfish.piping..",
        "lungfish.siphon..",
        "lungfish.sizing..",
        "lungfish.noise..",
        "lungfish.backup..",
        "lungfish.standing..",
        "lungfish.cost..",
        "lungfish.headroom..",
        "lungfish.plan..",
        "lungfish.today..",
        "lungfish.everyday..",
        "lungfish.choice..",
        "lungfish.growth..",
        "lungfish.sure..",
        "lungfish.oxygen..",
        "lungfish.outage..",
        "lungfish.rescue..",
        "lungfish.build..",
        "lungfish.commissioning..",
        "lungfish.measured..",
        "lungfish.logbook..",
        "lungfish.document.."
    };

    @ArchTest
    static final ArchRule enginesKnowNoFilesAndNoJson = noClasses()
            .that()
            .resideInAnyPackage(ENGINES)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml..", "java.nio.file..", "java.util.logging..");

    /** Days are written in the log of a room; which day it is today, an engine is told. */
    @ArchTest
    static final ArchRule enginesHaveNoClock = noClasses()
            .that()
            .resideInAnyPackage(ENGINES)
            .should()
            .callMethodWhere(target(nameMatching("now|systemDefaultZone|nanoTime|currentTimeMillis"))
                    .and(target(owner(resideInAPackage("java..")))))
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.time\\.(Clock|Instant|LocalTime|.*DateTime)");
}
