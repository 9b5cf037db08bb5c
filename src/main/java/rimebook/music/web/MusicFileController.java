package rimebook.music.web;

import org.springframework.core.io.Resource;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.music.Music;
import rimebook.music.MusicView;

/** The bytes of one version, whole or in part, as a player asks for them. */
@Controller
class MusicFileController {

	private final Music music;

	MusicFileController(Music music) {
		this.music = music;
	}

	@GetMapping("/desk/music/file/{version}")
	ResponseEntity<Resource> file(@PathVariable MusicView.VersionId version) {
		return this.music.content(version).answer();
	}

}
