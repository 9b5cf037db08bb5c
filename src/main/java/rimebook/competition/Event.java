package rimebook.competition;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;

@Entity
class Event {

	@Id
	private UUID id;

	@Version
	private Integer version;

	private UUID competitionId;

	private int position;

	private String slug;

	private String name;

	@Convert(converter = JudgingMethodConverter.class)
	private JudgingMethod method;

	private int judges;

	private String evenPanelReason;

	@Convert(converter = JudgingPoliciesConverter.class)
	private JudgingPolicies policies;

	private String ruleSet = "";

	private String skatingLevel = "";

	private boolean signatureWaits = true;

	private String cancelled = "";

	private @Nullable Instant cancelledAt;

	@OneToMany(mappedBy = "event", cascade = CascadeType.ALL, orphanRemoval = true)
	@OrderBy("position")
	private List<Segment> segments = new ArrayList<>();

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Event() {
	}

	// Hibernate counts the versions; whoever makes one writes the rest at once.
	@SuppressWarnings("NullAway.Init")
	Event(UUID id, CompetitionId competition, int position, String slug) {
		this.id = id;
		this.competitionId = competition.value();
		this.position = position;
		this.slug = slug;
	}

	void requireVersion(int version) {
		ConflictException.requireSeen("event", version, this.version);
	}

	/** Write down the facts. The slug stays: an address once given out keeps working. */
	void write(DraftEvent facts, Supplier<UUID> ids) {
		this.name = facts.name();
		write(facts.judging());
		writeSegments(facts.segments(), ids);
	}

	private void write(DraftEvent.Judging judging) {
		this.method = judging.method();
		this.judges = judging.judges();
		this.evenPanelReason = judging.evenPanelReason();
		this.policies = judging.policies();
		DraftEvent.PointsChoice points = judging.points();
		this.ruleSet = (points != null) ? points.ruleSet() : "";
		this.skatingLevel = (points != null) ? points.level() : "";
		this.signatureWaits = judging.signatureWaits();
	}

	void cancel(String reason, Instant now) {
		this.cancelled = reason;
		this.cancelledAt = now;
	}

	void bringBack() {
		this.cancelled = "";
		this.cancelledAt = null;
	}

	Segment segment(SegmentId id) {
		return this.segments.stream()
			.filter((segment) -> segment.view().id().equals(id))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment", id));
	}

	/**
	 * Keep a segment's identity where its name is still there, else where one fell away,
	 * so that links to it stay good.
	 */
	private void writeSegments(List<DraftEvent.DraftSegment> drafts, Supplier<UUID> ids) {
		List<String> slugs = slugs(drafts);
		List<Segment> spare = new ArrayList<>(unnamed(slugs));
		for (int i = 0; i < drafts.size(); i++) {
			String slug = slugs.get(i);
			Segment segment = this.segments.stream()
				.filter((each) -> each.hasSlug(slug))
				.findFirst()
				.orElseGet(() -> spare.isEmpty() ? added(ids) : spare.remove(0));
			segment.write(i + 1, slug, drafts.get(i));
		}
		this.segments.removeAll(spare);
		this.segments.sort(Comparator.comparingInt(Segment::position));
	}

	/** The segments that would be gone if these were written. */
	List<SegmentView> fallingAway(List<DraftEvent.DraftSegment> drafts) {
		List<String> slugs = slugs(drafts);
		long taken = slugs.stream()
			.filter((slug) -> this.segments.stream().noneMatch((one) -> one.hasSlug(slug)))
			.count();
		return unnamed(slugs).stream().skip(taken).map(Segment::view).toList();
	}

	private static List<String> slugs(List<DraftEvent.DraftSegment> drafts) {
		return drafts.stream().map((draft) -> Slug.of(draft.name(), "segment")).toList();
	}

	private List<Segment> unnamed(List<String> slugs) {
		return this.segments.stream().filter((segment) -> slugs.stream().noneMatch(segment::hasSlug)).toList();
	}

	private Segment added(Supplier<UUID> ids) {
		Segment segment = new Segment(ids.get(), this);
		this.segments.add(segment);
		return segment;
	}

	boolean hasSlug(String slug) {
		return slug.equals(this.slug);
	}

	boolean isNamed(String name) {
		return name.equalsIgnoreCase(this.name);
	}

	EventId id() {
		return new EventId(this.id);
	}

	EventView view() {
		return new EventView(id(),
				new EventView.Listing(new CompetitionId(this.competitionId), this.position, this.slug, this.name),
				judging(), this.segments.stream().map(Segment::view).toList(),
				EventView.Cancellation.of(this.cancelled, this.cancelledAt), this.version);
	}

	private DraftEvent.Judging judging() {
		return new DraftEvent.Judging(this.method, this.judges, this.evenPanelReason, this.policies, points(),
				this.signatureWaits);
	}

	private DraftEvent.@Nullable PointsChoice points() {
		return this.ruleSet.isEmpty() ? null : new DraftEvent.PointsChoice(this.ruleSet, this.skatingLevel);
	}

	/** The facts in one line, for the record. */
	String inWords() {
		return view().inWords();
	}

}
