package rimebook.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;

/**
 * The digest of a form as it was sent: who, where, every field and file, the token among
 * them. A form that was corrected and sent again has another one.
 */
final class FormDigest {

	private final MessageDigest sha256;

	private FormDigest() {
		try {
			this.sha256 = MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java platform has SHA-256", ex);
		}
	}

	static String of(HttpServletRequest request) {
		FormDigest digest = new FormDigest();
		digest.add(Objects.requireNonNullElse(request.getRemoteUser(), ""));
		digest.add(RoutedPath.of(request));
		new TreeMap<>(request.getParameterMap()).forEach(digest::add);
		if (request instanceof MultipartHttpServletRequest parts) {
			new TreeMap<>(parts.getMultiFileMap()).forEach(digest::addFiles);
		}
		return HexFormat.of().formatHex(digest.sha256.digest());
	}

	/** The token against foreign sites is written anew on every page. */
	private void add(String field, String[] values) {
		if (!field.equals("_csrf")) {
			add(field);
			Arrays.stream(values).forEach(this::add);
		}
	}

	private void addFiles(String field, List<MultipartFile> files) {
		add(field);
		files.forEach(this::add);
	}

	/** A file may be larger than anybody wants to have in memory. */
	private void add(MultipartFile file) {
		length(file.getSize());
		try (InputStream bytes = new DigestInputStream(file.getInputStream(), this.sha256)) {
			bytes.transferTo(OutputStream.nullOutputStream());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private void add(String text) {
		add(text.getBytes(StandardCharsets.UTF_8));
	}

	private void add(byte[] bytes) {
		length(bytes.length);
		this.sha256.update(bytes);
	}

	private void length(long length) {
		this.sha256.update((length + ":").getBytes(StandardCharsets.US_ASCII));
	}

}
