package rimebook.testsupport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jsoup.Connection;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/**
 * Somebody with a browser without JavaScript: opens pages, fills in the forms that stand
 * on them and sends them, keeping cookies. Speaks real HTTP to a running application.
 */
public final class Visitor {

	private final URI service;

	private final CookieManager cookies = new CookieManager();

	private final HttpClient http = client(HttpClient.Redirect.NORMAL);

	public Visitor(int port) {
		this.service = URI.create("http://localhost:" + port);
	}

	/**
	 * Sign in with a name and a password, and open none of the pages behind the door yet.
	 */
	public static Visitor signedIn(int port, String name, String password) {
		Visitor visitor = new Visitor(port);
		HttpRequest.Builder form = visitor.open("/sign-in")
			.filledIn("form[action=/sign-in]", Map.of("signInName", name, "password", password));
		send(visitor.client(HttpClient.Redirect.NEVER), form, HttpResponse.BodyHandlers.discarding());
		return visitor;
	}

	private HttpClient client(HttpClient.Redirect redirect) {
		return HttpClient.newBuilder().cookieHandler(this.cookies).followRedirects(redirect).build();
	}

	/** What a browser would say in {@code Cookie}. */
	public String cookies() {
		try {
			return String.join("; ", this.cookies.get(this.service, Map.of()).getOrDefault("Cookie", List.of()));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Open a page. */
	public Page open(String path) {
		return page(send(HttpRequest.newBuilder(this.service.resolve(path)).GET()));
	}

	/**
	 * Open a page as a request does that lies about where it was sent to.
	 * @param host what it says in {@code Host} and in forwarded headers
	 */
	public Page openAs(String host, String path) {
		URI uri = this.service.resolve(path);
		try (Socket socket = new Socket(uri.getHost(), uri.getPort())) {
			List<String> cookies = this.cookies.get(uri, Map.of()).getOrDefault("Cookie", List.of());
			socket.getOutputStream()
				.write(("GET " + path + " HTTP/1.0\r\nHost: " + host + "\r\nX-Forwarded-Host: " + host
						+ "\r\nForwarded: host=" + host + "\r\nCookie: " + String.join("; ", cookies) + "\r\n\r\n")
					.getBytes(StandardCharsets.US_ASCII));
			String[] answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
				.split("\r\n\r\n", 2);
			return new Page(Integer.parseInt(answer[0].split(" ", 3)[1]), uri, Jsoup.parse(answer[1], uri.toString()));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Fetch a document and return the answer as it is. */
	public HttpResponse<byte[]> bytes(String path) {
		return send(HttpRequest.newBuilder(this.service.resolve(path)).GET(), HttpResponse.BodyHandlers.ofByteArray());
	}

	/** Send JSON and return the answer as it is. */
	public HttpResponse<String> json(String method, String path, String body, String... headers) {
		HttpRequest.Builder request = HttpRequest.newBuilder(this.service.resolve(path))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (headers.length > 0) {
			request.headers(headers);
		}
		return send(request);
	}

	private HttpResponse<String> send(HttpRequest.Builder request) {
		return send(request, HttpResponse.BodyHandlers.ofString());
	}

	private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> body) {
		return send(this.http, request, body);
	}

	private static <T> HttpResponse<T> send(HttpClient http, HttpRequest.Builder request,
			HttpResponse.BodyHandler<T> body) {
		try {
			return http.send(request.build(), body);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException(ex);
		}
	}

	private Page page(HttpResponse<String> answer) {
		return new Page(answer.statusCode(), answer.uri(), Jsoup.parse(answer.body(), answer.uri().toString()));
	}

	/** A page as it was answered. */
	public final class Page {

		private final int status;

		private final URI uri;

		private final Document document;

		private Page(int status, URI uri, Document document) {
			this.status = status;
			this.uri = uri;
			this.document = document;
		}

		/** The HTTP status. */
		public int status() {
			return this.status;
		}

		/** The path that answered in the end. */
		public String path() {
			return this.uri.getPath();
		}

		/** All text that a person reads. */
		public String text() {
			return this.document.text();
		}

		/** The page's elements. */
		public Document document() {
			return this.document;
		}

		/**
		 * Fill in a form of this page and send it, with everything it held already and no
		 * file.
		 * @param selector the form
		 * @param typed values by field name
		 */
		public Page submit(String selector, Map<String, String> typed) {
			return page(send(filledIn(selector, typed)));
		}

		private HttpRequest.Builder filledIn(String selector, Map<String, String> typed) {
			Element element = this.document.selectFirst(selector);
			if (!(element instanceof FormElement form)) {
				throw new AssertionError("No form " + selector + " on " + this.uri + ": " + text());
			}
			Map<String, List<String>> fields = form.formData()
				.stream()
				.collect(Collectors.groupingBy(Connection.KeyVal::key, LinkedHashMap::new,
						Collectors.mapping(Connection.KeyVal::value, Collectors.toList())));
			form.select("input[type=file]").eachAttr("name").forEach(fields::remove);
			typed.forEach((field, value) -> fields.put(field, List.of(value)));
			return posting(form.absUrl("action"), fields);
		}

		/**
		 * Send a form of this page with a file, and with everything it held already.
		 * @param selector the form, with one field for a file
		 * @param typed values by field name
		 * @param fileName what the browser says that it is called
		 */
		public Page upload(String selector, Map<String, String> typed, String fileName, byte[] file) {
			FormElement form = (FormElement) Objects.requireNonNull(this.document.selectFirst(selector), selector);
			Map<String, String> fields = new LinkedHashMap<>();
			form.formData().forEach((field) -> fields.put(field.key(), field.value()));
			String name = Objects.requireNonNull(form.selectFirst("input[type=file]")).attr("name");
			fields.remove(name);
			fields.putAll(typed);
			String line = "----" + UUID.randomUUID();
			StringBuilder head = new StringBuilder();
			fields.forEach((field, value) -> head.append("--" + line + "\r\nContent-Disposition: form-data; name=\"")
				.append(field + "\"\r\n\r\n" + value + "\r\n"));
			head.append("--" + line + "\r\nContent-Disposition: form-data; name=\"" + name + "\"; filename=\""
					+ fileName + "\"\r\nContent-Type: application/octet-stream\r\n\r\n");
			List<byte[]> parts = List.of(head.toString().getBytes(StandardCharsets.UTF_8), file,
					("\r\n--" + line + "--\r\n").getBytes(StandardCharsets.UTF_8));
			int length = parts.stream().mapToInt((part) -> part.length).sum();
			return page(send(HttpRequest.newBuilder(URI.create(form.absUrl("action")))
				.header("Content-Type", "multipart/form-data; boundary=" + line)
				.POST(HttpRequest.BodyPublishers.fromPublisher(HttpRequest.BodyPublishers.ofByteArrays(parts),
						length))));
		}

		/** Press the only button of a form. */
		public Page press(String selector) {
			return submit(selector, Map.of());
		}

		/** Press the only button of a form that answers with a file. */
		public HttpResponse<byte[]> pressForFile(String selector) {
			return Visitor.this.send(filledIn(selector, Map.of()), HttpResponse.BodyHandlers.ofByteArray());
		}

		private static HttpRequest.Builder posting(String action, Map<String, List<String>> fields) {
			String body = fields.entrySet()
				.stream()
				.flatMap((field) -> field.getValue()
					.stream()
					.map((value) -> encode(field.getKey()) + "=" + encode(value)))
				.collect(Collectors.joining("&"));
			return HttpRequest.newBuilder(URI.create(action.replaceAll("#.*", "")))
				.header("Content-Type", "application/x-www-form-urlencoded")
				.POST(HttpRequest.BodyPublishers.ofString(body));
		}

		private static String encode(String text) {
			return URLEncoder.encode(text, StandardCharsets.UTF_8);
		}

	}

}
