package rimebook.entries.web;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

import rimebook.entries.EntryImport;

/** A file of entries, uploaded or pasted; an uploaded one goes first. */
record ImportForm(@Nullable String csv, @Nullable MultipartFile file) {

	static ImportForm of(String csv) {
		return new ImportForm(csv, null);
	}

	String text(EntryImport entryImport) {
		if (this.file == null || this.file.isEmpty()) {
			return (this.csv != null) ? this.csv : "";
		}
		try {
			return entryImport.textOf(this.file.getBytes());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
