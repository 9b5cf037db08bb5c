package rimebook.testsupport;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;

import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/**
 * Whether a document on paper keeps to PDF/A-2, level A (ISO 19005-2), and to PDF/UA-1
 * (ISO 14289-1), as veraPDF, the checker of the PDF Association, finds.
 */
public final class PaperStandards {

	private static final List<PDFAFlavour> STANDARDS = List.of(PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1);

	static {
		VeraGreenfieldFoundryProvider.initialise();
	}

	private PaperStandards() {
	}

	/** What does not hold, a sentence each; empty where everything does. */
	public static List<String> faults(byte[] document) {
		List<String> faults = new ArrayList<>();
		STANDARDS.forEach((standard) -> faults.addAll(faults(document, standard)));
		return faults;
	}

	private static List<String> faults(byte[] document, PDFAFlavour standard) {
		try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(document), standard);
				PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
			return validator.validate(parser)
				.getTestAssertions()
				.stream()
				.filter((one) -> one.getStatus() == TestAssertion.Status.FAILED)
				.map((one) -> standard + ": " + one.getRuleId().getClause() + " " + one.getMessage() + " "
						+ one.getLocation())
				.distinct()
				.toList();
		}
		catch (Exception ex) {
			throw new IllegalStateException("The document could not be checked", ex);
		}
	}

}
