package rimebook.music.web;

import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.music.Music;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** A file that is handed in, as sent. */
class HandInForm {

	private @Nullable MultipartFile file;

	private String handInReason = "";

	Music.HandIn order(EntryId entry, SegmentId segment) {
		MultipartFile sent = this.file;
		if (sent == null) {
			throw new RuleViolationException("music-missing", "file", Sentence.of("music.missing"));
		}
		return new Music.HandIn(entry, segment, sent, sent.getSize(),
				Objects.requireNonNullElse(sent.getOriginalFilename(), ""), this.handInReason);
	}

	public @Nullable MultipartFile getFile() {
		return this.file;
	}

	public void setFile(MultipartFile file) {
		this.file = file;
	}

	public String getHandInReason() {
		return this.handInReason;
	}

	public void setHandInReason(String handInReason) {
		this.handInReason = handInReason;
	}

}
