package rimebook.protests.web;

import java.time.LocalDateTime;

import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;

import rimebook.protests.ProtestView;

/** A protest as typed at the desk; the time is that of the rink. */
class ProtestForm {

	private String entry = "";

	private ProtestView.@Nullable ProtestCategory category;

	private String text = "";

	private String filedBy = "";

	private int posting;

	@DateTimeFormat(pattern = "yyyy-MM-dd'T'HH:mm")
	private @Nullable LocalDateTime handedInAt;

	public String getEntry() {
		return this.entry;
	}

	public void setEntry(String entry) {
		this.entry = entry;
	}

	public ProtestView.@Nullable ProtestCategory getCategory() {
		return this.category;
	}

	public void setCategory(ProtestView.@Nullable ProtestCategory category) {
		this.category = category;
	}

	public String getText() {
		return this.text;
	}

	public void setText(String text) {
		this.text = text;
	}

	public String getFiledBy() {
		return this.filedBy;
	}

	public void setFiledBy(String filedBy) {
		this.filedBy = filedBy;
	}

	/** The posted version that it is against, 0 for the one posted last. */
	public int getPosting() {
		return this.posting;
	}

	public void setPosting(int posting) {
		this.posting = posting;
	}

	public @Nullable LocalDateTime getHandedInAt() {
		return this.handedInAt;
	}

	public void setHandedInAt(@Nullable LocalDateTime handedInAt) {
		this.handedInAt = handedInAt;
	}

}
