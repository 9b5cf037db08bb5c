package rimebook.web;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.Role;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;

/**
 * Gathers what the modules know to wait and tells for each person what is theirs to do,
 * and whose the rest is that they may see.
 */
@Component
@Transactional(readOnly = true)
class WaitingWork {

	private final ObjectProvider<WaitingList> lists;

	WaitingWork(ObjectProvider<WaitingList> lists) {
		this.lists = lists;
	}

	/** What concerns this person, the most urgent first. */
	List<WaitingLine> of(Authentication signedIn, Actor viewer) {
		Set<Role> held = roles(signedIn);
		return this.lists.stream()
			.flatMap((list) -> list.waiting(viewer))
			.filter((waiting) -> PathRules.of(path(waiting)).isReadBy(held))
			.sorted(Comparator.comparingInt(Waiting::order).thenComparing((waiting) -> waiting.place().competition()))
			.map((waiting) -> line(waiting, held))
			.toList();
	}

	private static WaitingLine line(Waiting waiting, Set<Role> held) {
		Set<Role> whose = whose(waiting);
		boolean mine = held.contains(Role.ADMINISTRATOR) || held.stream().anyMatch(whose::contains);
		return new WaitingLine(waiting, whose, mine);
	}

	private static Set<Role> whose(Waiting waiting) {
		Set<Role> whose = EnumSet.copyOf(PathRules.of(path(waiting)).writers());
		whose.removeIf((role) -> role == Role.ADMINISTRATOR
				|| (!waiting.roles().isEmpty() && !waiting.roles().contains(role.name())));
		return whose;
	}

	private static String path(Waiting waiting) {
		return waiting.path().replaceAll("[?#].*", "");
	}

	static Set<Role> roles(Authentication signedIn) {
		return signedIn.getAuthorities()
			.stream()
			.map(GrantedAuthority::getAuthority)
			.filter((name) -> name != null && name.startsWith("ROLE_"))
			.map((name) -> Role.valueOf(name.substring("ROLE_".length())))
			.collect(Collectors.toCollection(() -> EnumSet.noneOf(Role.class)));
	}

}
