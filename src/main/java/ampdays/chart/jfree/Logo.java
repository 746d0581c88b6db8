package ampdays.chart.jfree;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;

/** A picture of somebody else made fit for a page: small enough, on white, and without whatever else its file holds. */
public final class Logo {
    private static final int MOST_WIDTH = 480;
    private static final int MOST_HEIGHT = 180;

    private Logo() {}

    /** As a PNG; empty when it cannot be read as a picture. */
    public static Optional<byte[]> scaled(byte[] file) throws IOException {
        ImageIO.setUseCache(false);
        BufferedImage read;
        try {
            read = ImageIO.read(new ByteArrayInputStream(file));
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
        if (read == null) {
            return Optional.empty();
        }
        double scale =
                Math.min(1, Math.min(MOST_WIDTH / (double) read.getWidth(), MOST_HEIGHT / (double) read.getHeight()));
        int width = (int) Math.max(1, Math.round(scale * read.getWidth()));
        int height = (int) Math.max(1, Math.round(scale * read.getHeight()));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(read.getScaledInstance(width, height, java.awt.Image.SCALE_AREA_AVERAGING), 0, 0, null);
        graphics.dispose();
        return Optional.of(Png.encode(((DataBufferInt) image.getRaster().getDataBuffer()).getData(), width, height));
    }
}
