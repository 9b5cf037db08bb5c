package rimebook.web;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.ElementValue;
import rimebook.tabulation.points.Points;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever the tabulation refuses is told with its sentence and is never a bug. */
class TabulationAnswersTests {

	static Stream<Method> factories() throws ClassNotFoundException {
		return Stream.of(TabulationException.class, Class.forName("rimebook.tabulation.points.Refusal"))
			.flatMap((type) -> Arrays.stream(type.getDeclaredMethods()))
			.filter((method) -> java.lang.reflect.Modifier.isStatic(method.getModifiers()))
			.filter((method) -> method.getReturnType() == TabulationException.class)
			.filter(Predicate.not(Method::isSynthetic));
	}

	@Test
	void everyFactoryIsFound() throws ClassNotFoundException {
		assertThat(factories()).hasSizeGreaterThan(60);
	}

	@ParameterizedTest
	@MethodSource("factories")
	void everyRefusalOfTheTabulationIsAnsweredWithItsSentence(Method factory) throws ReflectiveOperationException {
		factory.setAccessible(true);
		TabulationException refused = (TabulationException) factory.invoke(null,
				Arrays.stream(factory.getParameterTypes()).map(TabulationAnswersTests::any).toArray());
		Refusal answer = RefusalReader.read(refused);
		assertThat(answer).isNotNull();
		assertThat(answer.status().value()).isEqualTo(422);
		assertThat(answer.code()).isEqualTo(refused.code());
		assertThat(answer.sentence().english()).isEqualTo(refused.getMessage());
	}

	private static Object any(Class<?> type) {
		if (type == int.class) {
			return 3;
		}
		if (type == String.class) {
			return "a text.";
		}
		if (type == Sentence.class) {
			return Sentence.said("values");
		}
		if (type == EntryStatus.class) {
			return EntryStatus.WITHDRAWN;
		}
		if (type == Points.class) {
			return new Points(100);
		}
		if (type == ElementValue.GradeRange.class) {
			return ElementValue.GradeRange.values()[0];
		}
		if (type == TabulationException.TextPosition.class) {
			return new TabulationException.TextPosition(1, 1);
		}
		return List.of("one", "two");
	}

}
