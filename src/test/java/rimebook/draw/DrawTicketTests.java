package rimebook.draw;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class DrawTicketTests {

	/** As printed by {@code printf '%s' 'TEXT' | sha256sum} of GNU coreutils. */
	@Test
	void ticketIsWhatTheShellPrints() {
		assertThat(DrawTicket.of("deadbeef01234567", "Short Programme", "Rime Flakes", "Harbour Blades").hex())
			.isEqualTo("07055f3ad9ea4a0dfc8b7cc7b86a256d9bdd2c1bf11c6d8e762d28676bbc06d0");
		assertThat(DrawTicket.of("7", "Kür", "Ärö", "Åbo").hex())
			.isEqualTo("07cd6de1d8a0268910c0e31564ac8a3d0ad697517335a2a5bee4ce9eecd573a8");
	}

	@Test
	void accentTypedAsTwoCharactersGivesTheSameTicket() {
		assertThat(DrawTicket.of("7", "Ku\u0308r", "A\u0308ro\u0308", "A\u030abo"))
			.isEqualTo(DrawTicket.of("7", "Kür", "Ärö", "Åbo"));
	}

	@Test
	void namesakesOfTwoClubsHaveTheirOwnTickets() {
		assertThat(DrawTicket.of("7", "Free", "Aurora", "North Club"))
			.isNotEqualTo(DrawTicket.of("7", "Free", "Aurora", "South Club"));
	}

}
