package rimebook.pages;

import java.util.stream.Stream;

import rimebook.shared.Actor;

/**
 * What a module knows to wait at the desk. A module that knows of something declares a
 * bean; the first page of the desk shows all of it, to each person what is theirs first.
 */
@FunctionalInterface
public interface WaitingList {

	/**
	 * Everything that waits now, whoever has to do it.
	 * @param viewer who asks, since what one person began may wait for another
	 */
	Stream<Waiting> waiting(Actor viewer);

}
