package rimebook.rehearsal;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Collectors;

/**
 * How this very program is started again as a process of its own: by the same Java, from
 * the same jar or the same class path.
 */
final class JavaMachine {

	private static final String MAIN = "rimebook.RimebookApplication";

	private static final Path NICE = Path.of("/usr/bin/nice");

	private JavaMachine() {
	}

	/**
	 * The command line, without the program's own arguments. Where the system has a way
	 * to say so, the process comes after all others.
	 * @param options of the Java machine
	 */
	static List<String> command(List<String> options) {
		List<String> command = new ArrayList<>();
		if (Files.isExecutable(NICE)) {
			command.addAll(List.of(NICE.toString(), "-n", "10"));
		}
		command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
		command.addAll(options);
		command.addAll(program(System.getProperty("java.class.path")));
		return command;
	}

	/** A jar that starts by itself is started so; everything else by its main class. */
	static List<String> program(String classPath) {
		if (!classPath.contains(File.pathSeparator) && startsByItself(Path.of(classPath))) {
			return List.of("-jar", absolute(classPath));
		}
		return List.of("-cp",
				Arrays.stream(classPath.split(File.pathSeparator))
					.map(JavaMachine::absolute)
					.collect(Collectors.joining(File.pathSeparator)),
				MAIN);
	}

	/** The process is started in another folder. */
	private static String absolute(String entry) {
		return Path.of(entry).toAbsolutePath().toString();
	}

	private static boolean startsByItself(Path file) {
		if (!Files.isRegularFile(file)) {
			return false;
		}
		try (JarFile jar = new JarFile(file.toFile())) {
			Manifest manifest = jar.getManifest();
			return manifest != null && MAIN.equals(manifest.getMainAttributes().getValue("Start-Class"));
		}
		catch (IOException ex) {
			return false;
		}
	}

}
