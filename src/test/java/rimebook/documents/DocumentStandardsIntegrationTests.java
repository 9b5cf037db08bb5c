package rimebook.documents;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.testsupport.PaperStandards;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** Each kind of document once, since the checker takes its time. */
@WholeApplication
class DocumentStandardsIntegrationTests {

	private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.FRENCH, Locale.forLanguageTag("fi"));

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Documents documents;

	private final Set<DocumentKind> checked = EnumSet.noneOf(DocumentKind.class);

	@Test
	void everyKindKeepsToTheStandardsForArchivesAndForScreenReaders() {
		PaperDay placement = PaperDay.placement(this.context);
		placement.rule();
		placement.plan();
		placement.post();
		placement.protest();
		PaperDay points = PaperDay.points(this.context);
		points.sign();
		check(points.ref(DocumentKind.JUDGES_DETAIL));
		check(points.ref(DocumentKind.CERTIFICATES));
		this.documents.offered(placement.small.event()).forEach(this::check);
		check(DocumentRef.of(DocumentKind.PANEL_REVIEW, placement.small.event().id(), 0));
		check(DocumentRef.of(DocumentKind.PANEL_REVIEW, points.small.event().id(), 0));
		Documents.Printed bound = this.documents.printAll(points.small.event(), PaperSize.A4, Locale.FRENCH);
		assertThat(PaperStandards.faults(bound.bytes())).as(bound.name()).isEmpty();
		assertThat(this.checked).isEqualTo(EnumSet.allOf(DocumentKind.class));
	}

	/** On both papers and in every language in turn. */
	private void check(DocumentRef ref) {
		Locale language = LANGUAGES.get(ref.kind().ordinal() % LANGUAGES.size());
		PaperSize paper = PaperSize.values()[ref.kind().ordinal() % PaperSize.values().length];
		Documents.Printed printed = this.documents.print(ref, paper, language);
		assertThat(PaperStandards.faults(printed.bytes())).as(printed.name()).isEmpty();
		this.checked.add(ref.kind());
	}

}
