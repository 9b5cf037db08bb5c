package rimebook.cli;

import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.ValueTable;

/** A file with the values of codes and grades. */
final class ValuesFile {

	private ValuesFile() {
	}

	static ValueTable read(String name) {
		String text = CsvFile.text(name);
		try {
			return ValueTable.parse(text);
		}
		catch (TabulationException ex) {
			throw ex.position()
				.map((position) -> InputException.at(name, position.line(), position.column(), ex.getMessage()))
				.orElseThrow(() -> ex);
		}
	}

}
