package rimebook.live.share;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

import javax.imageio.ImageIO;

/**
 * Draws a card as PNG, one at a time. Official and provisional differ from afar: a full
 * bar and stamp, or a dashed frame; the word is there, too.
 */
public final class ShareDrawing {

	/** As wide as those who show such pictures like it. */
	public static final int WIDTH = 1200;

	/** How high it is. */
	public static final int HEIGHT = 630;

	private static final Color GROUND = new Color(0x0C1A28);

	private static final Color SURFACE = new Color(0x13263A);

	private static final Color INK = new Color(0xEDF4F8);

	private static final Color SOFT = new Color(0xA9BDCC);

	private static final Color LANTERN = new Color(0xFFB454);

	private static final Color SIGNED = new Color(0x5FD3BE);

	private static final double MARGIN = 64;

	private static final double INNER = WIDTH - 2 * MARGIN;

	private final Lettering plain = Lettering.of("Regular");

	private final Lettering strong = Lettering.of("Bold");

	/** Draw. */
	public synchronized byte[] png(ShareCard card) {
		BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
		Graphics2D page = image.createGraphics();
		try {
			page.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
			page.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
			ground(page, card);
			double y = heading(page, card);
			y = headline(page, card, y);
			rows(page, card, y);
			foot(page, card);
		}
		finally {
			page.dispose();
		}
		return written(image);
	}

	private static byte[] written(BufferedImage image) {
		ByteArrayOutputStream out = new ByteArrayOutputStream(64 * 1024);
		try {
			ImageIO.write(image, "png", out);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return out.toByteArray();
	}

	private static void ground(Graphics2D page, ShareCard card) {
		page.setColor(GROUND);
		page.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
		page.setColor(card.official() ? SIGNED : LANTERN);
		if (card.official()) {
			page.fill(new Rectangle2D.Double(0, 0, 24, HEIGHT));
			return;
		}
		page.setStroke(new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] { 24, 16 }, 0));
		page.draw(new Rectangle2D.Double(14, 14, WIDTH - 28, HEIGHT - 28));
	}

	private double heading(Graphics2D page, ShareCard card) {
		double stamp = this.strong.width(card.stamp(), 30) + 44;
		page.setColor(SOFT);
		this.plain.write(page, this.plain.fitted(card.competition(), 30, INNER - stamp - 24), MARGIN, 88, 30);
		Shape frame = new RoundRectangle2D.Double(WIDTH - MARGIN - stamp, 52, stamp, 52, 12, 12);
		page.setColor(card.official() ? SIGNED : LANTERN);
		page.setStroke(new BasicStroke(3));
		if (card.official()) {
			page.fill(frame);
			page.setColor(GROUND);
		}
		else {
			page.draw(frame);
		}
		this.strong.write(page, card.stamp(), WIDTH - MARGIN - stamp + 22, 89, 30);
		page.setColor(INK);
		this.strong.write(page, this.strong.fitted(card.what(), 48, INNER), MARGIN, 160, 48);
		return 160;
	}

	private double headline(Graphics2D page, ShareCard card, double above) {
		if (card.headline().isEmpty()) {
			return above + 40;
		}
		double y = above;
		page.setColor(INK);
		List<String> lines = this.plain.lines(card.headline(), 38, INNER, 3);
		for (String line : lines) {
			y += (line.equals(lines.get(0))) ? 64 : 48;
			this.plain.write(page, line, MARGIN, y, 38);
		}
		return y + 36;
	}

	private void rows(Graphics2D page, ShareCard card, double above) {
		double room = HEIGHT - 96 - above;
		int rows = Math.min(card.rows().size(), (int) (room / 52));
		for (int i = 0; i < rows; i++) {
			ShareCard.Row row = card.rows().get(i);
			double top = above + i * 52;
			page.setColor(SURFACE);
			page.fill(new RoundRectangle2D.Double(MARGIN, top, INNER, 46, 10, 10));
			page.setColor(i == 0 ? LANTERN : SOFT);
			this.strong.write(page, row.place(), MARGIN + 20, top + 33, 28);
			page.setColor(INK);
			double figure = row.figure().isEmpty() ? 0 : this.strong.width(row.figure(), 28) + 20;
			this.strong.write(page, this.strong.fitted(row.team(), 28, INNER - 150 - figure), MARGIN + 120, top + 33,
					28);
			this.strong.write(page, row.figure(), WIDTH - MARGIN - figure, top + 33, 28);
		}
	}

	private void foot(Graphics2D page, ShareCard card) {
		page.setColor(SOFT);
		double name = this.strong.width("Rimebook", 26);
		this.plain.write(page, this.plain.fitted(card.state(), 26, INNER - name - 24), MARGIN, HEIGHT - 46, 26);
		this.strong.write(page, "Rimebook", WIDTH - MARGIN - name, HEIGHT - 46, 26);
	}

}
