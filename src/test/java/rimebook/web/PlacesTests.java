package rimebook.web;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

@Timeout(30)
class PlacesTests {

	private final Places places = new Places(2, Duration.ofSeconds(20));

	private final ExecutorService guests = Executors.newCachedThreadPool();

	@AfterEach
	void goHome() {
		this.guests.shutdownNow();
	}

	@Test
	void whoWaitsIsLetInWhenSomebodyLeaves() throws Exception {
		List<CompletableFuture<Boolean>> guests = come(4);
		await().until(() -> guests.stream().filter(CompletableFuture::isDone).count() == 2);
		this.places.leave();
		this.places.leave();
		for (CompletableFuture<Boolean> guest : guests) {
			assertThat(guest.get()).isTrue();
		}
	}

	@Test
	void noMoreWaitThanThereArePlaces() {
		List<CompletableFuture<Boolean>> guests = come(10);
		await().until(() -> guests.stream().filter(CompletableFuture::isDone).count() == 8);
		assertThat(guests.stream().filter(CompletableFuture::isDone).filter(CompletableFuture::join)).hasSize(2);
		this.places.leave();
		this.places.leave();
		await().until(() -> guests.stream().allMatch(CompletableFuture::isDone));
		assertThat(guests.stream().filter(CompletableFuture::join)).hasSize(4);
	}

	@Test
	void whoWaitedInVainIsSentAwayAndTakesNoPlace() {
		Places hurried = new Places(1, Duration.ofMillis(1));
		assertThat(hurried.take()).isTrue();
		assertThat(hurried.take()).isFalse();
		hurried.leave();
		assertThat(hurried.take()).isTrue();
	}

	private List<CompletableFuture<Boolean>> come(int number) {
		List<CompletableFuture<Boolean>> guests = new ArrayList<>();
		for (int i = 0; i < number; i++) {
			guests.add(CompletableFuture.supplyAsync(this.places::take, this.guests));
		}
		return guests;
	}

}
