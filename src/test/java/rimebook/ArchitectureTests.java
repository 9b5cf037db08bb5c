package rimebook;

import java.util.Random;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.persistence.Entity;
import org.junit.jupiter.api.Test;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Controller;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

class ArchitectureTests {

	private static final JavaClasses PRODUCTION = new ClassFileImporter()
		.withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
		.importPackages("rimebook");

	@Test
	void tabulationIsPure() {
		noClasses().that()
			.resideInAPackage("rimebook.tabulation..")
			.and()
			.doNotHaveSimpleName("package-info")
			.should()
			.dependOnClassesThat()
			.resideOutsideOfPackages("rimebook.tabulation..", "java..", "org.jspecify.annotations..")
			.because("places are a function of rules and cards alone")
			.check(PRODUCTION);
	}

	@Test
	void tabulationAsksForNoFilesTimeOrChance() {
		noClasses().that()
			.resideInAPackage("rimebook.tabulation..")
			.should()
			.dependOnClassesThat()
			.resideInAnyPackage("java.io", "java.nio..", "java.net..", "java.time..", "java.util.concurrent..",
					"java.util.random..")
			.orShould()
			.dependOnClassesThat()
			.areAssignableTo(Random.class)
			.orShould()
			.callMethod(Math.class, "random")
			.check(PRODUCTION);
	}

	@Test
	void tabulationHasNoFloatingPoint() {
		noFields().that()
			.areDeclaredInClassesThat()
			.resideInAPackage("rimebook.tabulation..")
			.should()
			.haveRawType(double.class)
			.orShould()
			.haveRawType(float.class)
			.check(PRODUCTION);
		noMethods().that()
			.areDeclaredInClassesThat()
			.resideInAPackage("rimebook.tabulation..")
			.should()
			.haveRawReturnType(double.class)
			.orShould()
			.haveRawReturnType(float.class)
			.check(PRODUCTION);
	}

	@Test
	void entitiesStayInTheirModule() {
		classes().that().areAnnotatedWith(Entity.class).should().notBePublic().allowEmptyShould(true).check(PRODUCTION);
	}

	@Test
	void repositoriesStayInTheirModule() {
		classes().that()
			.areAssignableTo(Repository.class)
			.should()
			.notBePublic()
			.allowEmptyShould(true)
			.check(PRODUCTION);
	}

	@Test
	void controllersStayInTheirModule() {
		classes().that()
			.areMetaAnnotatedWith(Controller.class)
			.should()
			.notBePublic()
			.allowEmptyShould(true)
			.check(PRODUCTION);
	}

}
