package org.orbwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Slow;

/** Data flows one way, and the mathematics knows nothing of the transport. */
@Slow
class ArchitectureTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.orbwright");

    @Test
    void onlyTheApiKnowsHttpJsonAndOpenApi() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.orbwright.api..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "io..",
                        "com.fasterxml..",
                        "org.eclipse.microprofile..",
                        "jakarta.ws..",
                        "jakarta.inject..",
                        "jakarta.enterprise..",
                        "org.jboss..")
                .check(CLASSES);
    }

    @Test
    void onlyRequestsAreValidatedByAnnotationsAndSweepsReadThem() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.orbwright.api..")
                .and()
                .haveSimpleNameNotEndingWith("Request")
                .and()
                .doNotHaveSimpleName("Document")
                .and()
                .doNotHaveSimpleName("FieldBounds")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("jakarta.validation..")
                .check(CLASSES);
    }

    @Test
    void nothingDependsOnTheApi() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.orbwright.api..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.orbwright.api..")
                .check(CLASSES);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.orbwright.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void roomsOfTheApiKnowOnlyWhatLiesBelow() {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("org.orbwright.api..")
                .layer("wire")
                .definedBy("org.orbwright.api.wire")
                .layer("query")
                .definedBy("org.orbwright.api.query")
                .layer("cells")
                .definedBy("org.orbwright.api.cells")
                .layer("guard")
                .definedBy("org.orbwright.api.guard")
                .layer("resources")
                .definedBy("org.orbwright.api")
                .layer("contract")
                .definedBy("org.orbwright.api.contract")
                .layer("command")
                .definedBy("org.orbwright.api.command")
                .whereLayer("query")
                .mayOnlyBeAccessedByLayers("cells", "guard", "resources", "contract", "command")
                .whereLayer("cells")
                .mayOnlyBeAccessedByLayers("guard", "resources", "contract", "command")
                .whereLayer("guard")
                .mayOnlyBeAccessedByLayers("resources", "contract", "command")
                .whereLayer("resources")
                .mayOnlyBeAccessedByLayers("contract", "command")
                .whereLayer("contract")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("command")
                .mayNotBeAccessedByAnyLayer()
                .ensureAllClassesAreContainedInArchitecture()
                .check(CLASSES.that(resideInAPackage("org.orbwright.api..")));
    }

    @Test
    void classesOfARoomHaveNoCycles() {
        slices().matching("org.orbwright.api.(*)..").should().beFreeOfCycles().check(CLASSES);
    }
}
