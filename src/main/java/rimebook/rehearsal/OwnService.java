package rimebook.rehearsal;

import java.net.Socket;
import java.net.http.HttpClient;
import java.security.GeneralSecurityException;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;

import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.TrustManager;
import javax.net.ssl.X509ExtendedTrustManager;

import org.jspecify.annotations.Nullable;

/**
 * How a simulated tablet speaks to the very service that it is part of. Where that has
 * TLS it shows the rink's certificate, which is for another name than a machine has for
 * itself and signed by an authority that no Java knows. It is taken as it is, and from
 * nobody else: what is sent here never leaves the machine.
 */
final class OwnService {

	/** What a machine calls itself, and what is asked for a certificate nowhere else. */
	private static final String OWN = "localhost";

	private OwnService() {
	}

	/** For addresses of this machine alone, by the name it has for itself. */
	static HttpClient client() {
		try {
			SSLContext context = SSLContext.getInstance("TLS");
			context.init(null, new TrustManager[] { new AsItIs() }, null);
			return HttpClient.newBuilder().sslContext(context).build();
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("This Java has no TLS", ex);
		}
	}

	private static final class AsItIs extends X509ExtendedTrustManager {

		/** Whom it is of is not told here. */
		@Override
		public void checkServerTrusted(X509Certificate[] chain, String type) throws CertificateException {
			throw new CertificateException("Nobody but this machine is asked here");
		}

		@Override
		public void checkServerTrusted(X509Certificate[] chain, String type, @Nullable Socket socket)
				throws CertificateException {
			checkServerTrusted(chain, type);
		}

		/** Nobody else answers at a port of this machine that this very program has. */
		@Override
		public void checkServerTrusted(X509Certificate[] chain, String type, @Nullable SSLEngine engine)
				throws CertificateException {
			if (engine == null || !OWN.equals(engine.getPeerHost())) {
				checkServerTrusted(chain, type);
			}
		}

		@Override
		public void checkClientTrusted(X509Certificate[] chain, String type) {
			throw new UnsupportedOperationException("It has no clients");
		}

		@Override
		public void checkClientTrusted(X509Certificate[] chain, String type, @Nullable Socket socket) {
			checkClientTrusted(chain, type);
		}

		@Override
		public void checkClientTrusted(X509Certificate[] chain, String type, @Nullable SSLEngine engine) {
			checkClientTrusted(chain, type);
		}

		@Override
		public X509Certificate[] getAcceptedIssuers() {
			return new X509Certificate[0];
		}

	}

}
