package rimebook.rehearsal;

import java.io.IOException;
import java.util.Collections;

import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.tomcat.util.http.MimeHeaders;
import org.apache.tomcat.util.http.ServerCookies;

import jakarta.servlet.ServletException;

/** Lets a request show the cookies of the rehearsal and no others. */
class IncomingCookies extends ValveBase {

	private static final String COOKIE = "cookie";

	IncomingCookies() {
		super(true);
	}

	@Override
	public void invoke(Request request, Response response) throws IOException, ServletException {
		MimeHeaders headers = request.getCoyoteRequest().getMimeHeaders();
		String all = String.join(";", Collections.list(headers.values(COOKIE)));
		if (!all.isEmpty()) {
			headers.removeHeader(COOKIE);
			String own = OwnCookies.incoming(all);
			if (!own.isEmpty()) {
				headers.addValue(COOKIE).setString(own);
			}
			readAgain(request, headers);
		}
		getNext().invoke(request, response);
	}

	/** The server has looked for its own session already. */
	private static void readAgain(Request request, MimeHeaders headers) {
		ServerCookies cookies = request.getServerCookies();
		cookies.recycle();
		if (request.getContext() != null) {
			request.getContext().getCookieProcessor().parseCookieHeader(headers, cookies);
		}
	}

}
