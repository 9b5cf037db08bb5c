package rimebook;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class RimebookApplication {

	public static void main(String[] args) {
		SpringApplication.run(RimebookApplication.class, args);
	}

}
