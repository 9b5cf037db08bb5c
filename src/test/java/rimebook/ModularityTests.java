package rimebook;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

class ModularityTests {

	@Test
	void modulesKeepTheirArrows() {
		ApplicationModules.of(RimebookApplication.class).verify();
	}

}
