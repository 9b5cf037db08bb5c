package rimebook.demo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

import org.springframework.context.annotation.Profile;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.music.Music;

/**
 * Music of the free skating that is made on the spot: each team has its own pitch, so
 * that people hear whose file plays. One team skates too long, one brings its music
 * along, one has forgotten it.
 */
@Component
@Profile("demo")
class DemoMusic {

	/** Samples a second: hardly good enough for a tone, and small. */
	private static final int RATE = 4000;

	private static final int LOWEST = 220;

	/** Two tones of a scale of twelve differ by so much. */
	private static final double HALF_TONE = Math.pow(2, 1 / 12.0);

	private final Music music;

	private final Entries entries;

	DemoMusic(Music music, Entries entries) {
		this.music = music;
		this.entries = entries;
	}

	/** Hand music in for the last segment of an event. */
	void handIn(EventView event) {
		SegmentView segment = event.segments().get(event.segments().size() - 1);
		List<EntryView> teams = this.entries.ofEvent(event.id()).stream().filter(EntryView::isEntered).toList();
		for (int at = 0; at < teams.size(); at++) {
			handIn(teams.get(at), segment, at);
		}
	}

	private void handIn(EntryView team, SegmentView segment, int at) {
		if (at == 2) {
			return;
		}
		if (at == 4) {
			this.music.onSite(team.id(), segment.id(), true, DemoCrew.SECRETARY);
			return;
		}
		int seconds = segment.facts().programmeSeconds() + ((at == 1) ? 2 * segment.facts().toleranceSeconds() : 0);
		byte[] file = tone(seconds, LOWEST * Math.pow(HALF_TONE, at));
		this.music.handIn(new Music.HandIn(team.id(), segment.id(), new ByteArrayResource(file), file.length,
				team.team().name() + ".wav", ""), DemoCrew.SECRETARY);
	}

	/** A tone that swells and fades once in two seconds. */
	private static byte[] tone(int seconds, double pitch) {
		byte[] samples = new byte[seconds * RATE];
		for (int at = 0; at < samples.length; at++) {
			double swell = Math.sin(Math.PI * at / (2.0 * RATE));
			samples[at] = (byte) (128 + 50 * swell * Math.sin(2 * Math.PI * pitch * at / RATE));
		}
		AudioFormat format = new AudioFormat(RATE, 8, 1, false, false);
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		try (AudioInputStream sound = new AudioInputStream(new ByteArrayInputStream(samples), format, samples.length)) {
			AudioSystem.write(sound, AudioFileFormat.Type.WAVE, file);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return file.toByteArray();
	}

}
