package ampdays.chart.jfree;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * A picture as pixels, two for each point of the screen.
 *
 * <p>Written by hand after the PNG specification (ISO/IEC 15948:2004), because the runtime's own writer tries every
 * filter on every row, which takes four times as long as drawing. Charts repeat from row to row, so the filter "up"
 * (table 11 there) and light compression give files as small.
 */
final class Png {
    private static final int SCALE = 2;
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final int FILTER_UP = 2;
    private static final int COMPRESSION = 3;

    /** 192 dots an inch, so that a page shows the picture at its size in points. */
    private static final int DOTS_PER_METRE = 7559;

    private Png() {}

    static byte[] of(Picture picture, Style style) throws IOException {
        int width = SCALE * picture.width();
        int height = SCALE * picture.height();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(SCALE, SCALE);
        Pen pen = new Pen(graphics, style);
        measureFonts(graphics, style);
        picture.draw(pen);
        graphics.dispose();
        return encode(((DataBufferInt) image.getRaster().getDataBuffer()).getData(), width, height);
    }

    /**
     * Has the runtime work out how high its fonts are, one thread at a time. It keeps what it has worked out; but of two
     * threads that are the first to ask, one may read a height that is not yet divided by the picture's scale, and words
     * stand a little off in some picture, seldom (seen once).
     */
    private static synchronized void measureFonts(Graphics2D graphics, Style style) {
        style.fonts().forEach(graphics::getFontMetrics);
    }

    /** @param rgb one int per pixel, 0xRRGGBB, row by row */
    static byte[] encode(int[] rgb, int width, int height) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream(1 << 17);
        DataOutputStream out = new DataOutputStream(file);
        out.write(SIGNATURE);
        chunk(out, "IHDR", header(width, height));
        chunk(out, "pHYs", density());
        chunk(out, "IDAT", compressed(rgb, width, height));
        chunk(out, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static byte[] header(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(width);
        out.writeInt(height);
        out.writeByte(8); // bits per sample
        out.writeByte(2); // red, green, blue
        out.writeByte(0); // deflate
        out.writeByte(0); // filter method
        out.writeByte(0); // not interlaced
        return bytes.toByteArray();
    }

    private static byte[] density() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(DOTS_PER_METRE);
        out.writeInt(DOTS_PER_METRE);
        out.writeByte(1); // the unit is the metre
        return bytes.toByteArray();
    }

    private static byte[] compressed(int[] rgb, int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
        Deflater deflater = new Deflater(COMPRESSION);
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, 1 << 14)) {
            byte[] row = new byte[1 + 3 * width];
            row[0] = FILTER_UP;
            for (int y = 0; y < height; y++) {
                filterUp(rgb, y * width, width, y > 0, row);
                out.write(row);
            }
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    /** Each byte less the one above it. */
    private static void filterUp(int[] rgb, int start, int width, boolean hasRowAbove, byte[] row) {
        for (int x = 0; x < width; x++) {
            int here = rgb[start + x];
            int above = hasRowAbove ? rgb[start + x - width] : 0;
            row[3 * x + 1] = (byte) ((here >> 16) - (above >> 16));
            row[3 * x + 2] = (byte) ((here >> 8) - (above >> 8));
            row[3 * x + 3] = (byte) (here - above);
        }
    }

    private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 checksum = new CRC32();
        checksum.update(name);
        checksum.update(data);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) checksum.getValue());
    }
}
