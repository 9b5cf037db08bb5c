package rimebook.music;

import java.nio.charset.StandardCharsets;

import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** What a player is given that asks for something handed in, whole or in part. */
final class Played {

	/**
	 * Nothing that stands in a file can do anything, whatever a browser takes it for.
	 */
	private static final String POLICY = "default-src 'none'; media-src 'self'; frame-ancestors 'none'; sandbox";

	private Played() {
	}

	static <T> ResponseEntity<T> answer(MusicKind kind, String name, String sha256, T bytes) {
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType(kind.playedAs()))
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename(name, StandardCharsets.UTF_8).build().toString())
			.header("Content-Security-Policy", POLICY)
			.header("X-Content-Type-Options", "nosniff")
			.eTag('"' + sha256 + '"')
			.cacheControl(CacheControl.noStore())
			.body(bytes);
	}

}
