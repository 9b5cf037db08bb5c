package rimebook.demo;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;

import static rimebook.demo.DemoCrew.ACCOUNTANT;
import static rimebook.demo.DemoCrew.REFEREE;

/** Posts and signs the results of the invented competition. */
@Component
@Profile("demo")
class DemoResults {

	private final ResultPublication publication;

	private final Standings standings;

	DemoResults(ResultPublication publication, Standings standings) {
		this.publication = publication;
		this.standings = standings;
	}

	void post(SegmentId segment) {
		this.publication.post(segment, version(segment), ACCOUNTANT);
	}

	void sign(SegmentId segment) {
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow(() -> missing(segment)).version();
	}

	private static NotFoundException missing(SegmentId segment) {
		return NotFoundException.of("result", segment);
	}

}
