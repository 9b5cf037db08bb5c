package rimebook.tabulation.points;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class ValueTableTests {

	private static final String SEVEN = "code,base,m3,m2,m1,p1,p2,p3\n";

	private static final String ROW = "X1,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5\n";

	@Test
	void readsSevenGrades() {
		ValueTable table = ValueTable.parse(SEVEN + ROW);
		assertThat(table.grades()).isEqualTo(ElementValue.GradeRange.SEVEN_GRADES);
		assertThat(table.value("X1").base()).hasToString("1.00");
		assertThat(table.grades().grades()).extracting((grade) -> table.value("X1").points(grade).toString())
			.containsExactly("-0.90", "-0.60", "-0.30", "0.00", "0.50", "1.00", "1.50");
	}

	@Test
	void readsElevenGradesInAnyOrderOfColumns() {
		ValueTable table = ValueTable.parse("""
				# where it comes from

				p5,p4,p3,p2,p1,m1,m2,m3,m4,m5,name,base,code
				0.50,0.40,0.30,0.20,0.10,-0.10,-0.20,-0.30,-0.40,-0.50,"block, ""artistic\""",1.00,"ABB"
				""");
		assertThat(table.grades()).isEqualTo(ElementValue.GradeRange.ELEVEN_GRADES);
		assertThat(table.value("ABB").points(-5)).hasToString("-0.50");
		assertThat(table.value("ABB").points(4)).hasToString("0.40");
	}

	@Test
	void oneColumnBeyondThreeMeansElevenGrades() {
		assertThat(List.of("m5", "m4", "p4", "p5")).allSatisfy((column) -> assertThat(PointsFixtures
			.refusalAt(() -> ValueTable.parse(SEVEN.strip() + "," + column + "\n" + ROW.strip() + ",0.00\n")))
			.isEqualTo("column-missing 1:1"));
	}

	@Test
	void ignoresAByteOrderMarkAndWindowsLines() {
		assertThat(ValueTable.parse("\uFEFF" + (SEVEN + ROW).replace("\n", "\r\n")))
			.isEqualTo(ValueTable.parse(SEVEN + ROW));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			X1,x,-0.9,-0.6,-0.3,0.5,1.0,1.5     | not-points 3:2
			X1,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.555 | not-points 3:8
			X1,1.0,-0.9,-0.6,-0.3,0.5,1.0       | uneven-row 3:8
			X1,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5,2 | uneven-row 3:9
			X0,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5   | duplicate-code 3:1
			,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5     | code-missing 3:1
			X1,-1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5  | value-out-of-range 3:1
			X1,1000.01,-0.9,-0.6,-0.3,0.5,1,1.5 | value-out-of-range 3:1
			X1,1,-0.9,-0.6,-0.3,0.5,1,1000.01   | value-out-of-range 3:1
			X1,1,-1000.01,-0.6,-0.3,0.5,1,1     | value-out-of-range 3:1
			X1,1.0,-0.9,-0.6,-0.3,0.5,1.6,1.5   | values-not-rising 3:1
			X1,1.0,0.9,0.6,0.3,0.5,1.0,1.5      | values-not-rising 3:1
			X1,1.0,-0.9,-0.6,-0.3,-0.1,1.0,1.5  | values-not-rising 3:1
			"X1,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5  | quote-not-closed 3:1
			""")
	void refusesABadRowAtItsPlace(String row, String refusal) {
		String text = SEVEN + "X0,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5\n" + row + "\n";
		assertThat(PointsFixtures.refusalAt(() -> ValueTable.parse(text))).isEqualTo(refusal);
	}

	@Test
	void refusesABadHeader() {
		assertThat(PointsFixtures.refusalAt(() -> ValueTable.parse(""))).isEqualTo("table-empty 1:1");
		assertThat(PointsFixtures.refusalAt(() -> ValueTable.parse("# nothing\n" + SEVEN)))
			.isEqualTo("table-empty 1:1");
		assertThat(PointsFixtures.refusalAt(() -> ValueTable.parse("code,base,base\nX,1,1\n")))
			.isEqualTo("duplicate-column 1:3");
		assertThat(PointsFixtures.refusalAt(() -> ValueTable.parse(SEVEN.replace("base", "Base") + ROW)))
			.isEqualTo("column-missing 1:1");
		assertThat(PointsFixtures.refusalAt(() -> ValueTable.parse("\n#\n" + SEVEN.replace("code", "key") + ROW)))
			.isEqualTo("column-missing 3:1");
	}

	@Test
	void acceptsTheLimits() {
		assertThat(ValueTable.parse(SEVEN + "X1,1000.00,-1000,-1,0,0,0,1000\nX2,0,0,0,0,0,0,0\n").values())
			.containsOnlyKeys("X1", "X2");
	}

	@Test
	void refusesAnUnknownCodeAndGrade() {
		ValueTable table = ValueTable.parse(SEVEN + ROW);
		assertThat(PointsFixtures.refusal(() -> table.value("x1")).code()).isEqualTo("unknown-code");
		assertThat(PointsFixtures.refusal(() -> table.value("X1").points(4))).hasMessageContaining("-3 to +3")
			.extracting("code")
			.isEqualTo("grade-out-of-range");
		assertThat(PointsFixtures.refusal(() -> table.value("X1").points(-4)).code()).isEqualTo("grade-out-of-range");
	}

	@Test
	void refusesARowWithoutEveryGrade() {
		assertThat(PointsFixtures.refusal(
				() -> new ElementValue("X", Points.ZERO, ElementValue.GradeRange.SEVEN_GRADES, List.of(Points.ZERO)))
			.code()).isEqualTo("values-not-rising");
	}

}
