package rimebook.music.web;

import java.nio.charset.StandardCharsets;

import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.music.Music;
import rimebook.music.MusicView;

/** The bytes of one version, whole or in part, as a player asks for them. */
@Controller
class MusicFileController {

	/**
	 * Nothing that stands in a file can do anything here, whatever a browser takes it
	 * for.
	 */
	private static final String POLICY = "default-src 'none'; media-src 'self'; frame-ancestors 'none'; sandbox";

	private final Music music;

	MusicFileController(Music music) {
		this.music = music;
	}

	@GetMapping("/desk/music/file/{version}")
	ResponseEntity<Resource> file(@PathVariable MusicView.VersionId version) {
		Music.Content content = this.music.content(version);
		MusicView.Version.File file = content.version().file();
		ContentDisposition name = ContentDisposition.attachment().filename(file.name(), StandardCharsets.UTF_8).build();
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType(file.kind().playedAs()))
			.header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
			.header("Content-Security-Policy", POLICY)
			.header("X-Content-Type-Options", "nosniff")
			.eTag('"' + file.sha256() + '"')
			.cacheControl(CacheControl.noStore())
			.body(content.bytes());
	}

}
