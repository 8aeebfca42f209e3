package org.orbwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Data flows one way, and the mathematics knows nothing of the transport. */
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
}
