package rimebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
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
import static org.assertj.core.api.Assertions.assertThat;

class ArchitectureTests {

	private static final JavaClasses PRODUCTION = new ClassFileImporter()
		.withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
		.importPackages("rimebook");

	private static final DescribedPredicate<JavaCall<?>> FLOATING = DescribedPredicate.describe(
			"taking or giving floating point",
			(call) -> Stream
				.concat(call.getTarget().getRawParameterTypes().stream(),
						Stream.of(call.getTarget().getRawReturnType()))
				.anyMatch(ArchitectureTests::isFloating));

	@Test
	void tabulationIsPure() {
		noClasses().that()
			.resideInAPackage("rimebook.tabulation..")
			.and()
			.doNotHaveSimpleName("package-info")
			.should()
			.dependOnClassesThat()
			.resideOutsideOfPackages("rimebook.tabulation..", "rimebook.wording", "java..",
					"org.jspecify.annotations..")
			.because("places are a function of rules and cards alone, said in keys and figures")
			.check(PRODUCTION);
	}

	@Test
	void plansAreLaidOutWithoutDatabaseOrClock() {
		noClasses().that()
			.resideInAPackage("rimebook.timetable.plan")
			.and()
			.doNotHaveSimpleName("package-info")
			.should()
			.dependOnClassesThat()
			.resideOutsideOfPackages("rimebook.timetable.plan", "rimebook.wording", "java..",
					"org.jspecify.annotations..")
			.orShould()
			.dependOnClassesThat()
			.areAssignableTo(Clock.class)
			.because("times follow from a plan, its teams and the time that whoever asks brings")
			.check(PRODUCTION);
	}

	@Test
	void eligibilityIsComparedWithoutDatabaseOrClock() {
		noClasses().that()
			.resideInAPackage("rimebook.rosters.eligibility")
			.and()
			.doNotHaveSimpleName("package-info")
			.should()
			.dependOnClassesThat()
			.resideOutsideOfPackages("rimebook.rosters.eligibility", "rimebook.wording", "java..",
					"org.jspecify.annotations..")
			.orShould()
			.dependOnClassesThat()
			.areAssignableTo(Clock.class)
			.because("findings follow from rules, a team and its neighbours, on the day that the rules name")
			.check(PRODUCTION);
	}

	@Test
	void feesAreReckonedWithoutDatabaseOrClock() {
		noClasses().that()
			.resideInAPackage("rimebook.fees.reckoning")
			.and()
			.doNotHaveSimpleName("package-info")
			.should()
			.dependOnClassesThat()
			.resideOutsideOfPackages("rimebook.fees.reckoning", "rimebook.wording", "java..",
					"org.jspecify.annotations..")
			.orShould()
			.dependOnClassesThat()
			.areAssignableTo(Clock.class)
			.because("what is owed follows from what was set and from what became of an entry")
			.check(PRODUCTION);
		noClasses().that().resideInAPackage("rimebook.fees..").should().callCodeUnitWhere(FLOATING).check(PRODUCTION);
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

	/** Constants, parameters and local variables are seen in the text only. */
	@Test
	void tabulationNamesNoFloatingPointTypeAnywhere() throws IOException {
		Pattern floating = Pattern.compile("\\b([dD]ouble|[fF]loat|doubleValue|floatValue|parseDouble)\\b");
		try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "rimebook", "tabulation"))) {
			List<Path> sources = files.filter((file) -> file.toString().endsWith(".java")).toList();
			assertThat(sources).hasSizeGreaterThan(90);
			assertThat(sources)
				.allSatisfy((file) -> assertThat(Files.readString(file)).doesNotContainPattern(floating));
		}
		noClasses().that()
			.resideInAPackage("rimebook.tabulation..")
			.should()
			.callCodeUnitWhere(FLOATING)
			.check(PRODUCTION);
	}

	@Test
	void entitiesStayInTheirModule() {
		classes().that().areAnnotatedWith(Entity.class).should().notBePublic().check(PRODUCTION);
	}

	@Test
	void repositoriesStayInTheirModule() {
		classes().that().areAssignableTo(Repository.class).should().notBePublic().check(PRODUCTION);
	}

	@Test
	void controllersStayInTheirModule() {
		classes().that().areMetaAnnotatedWith(Controller.class).should().notBePublic().check(PRODUCTION);
	}

	private static boolean isFloating(JavaClass type) {
		return Stream.of(double.class, float.class, Double.class, Float.class).anyMatch(type::isEquivalentTo);
	}

}
