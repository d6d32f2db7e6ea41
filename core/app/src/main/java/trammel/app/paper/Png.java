package trammel.app.paper;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import trammel.app.drawings.Drawing;

/** A drawing as a picture for a screen. */
public final class Png {
  private static final double DOTS_PER_MM = 150 / 25.4;

  private Png() {}

  /** The picture's file, at 150 dots an inch. */
  public static byte[] of(Drawing drawing) {
    int width = (int) Math.ceil(drawing.widthMm() * DOTS_PER_MM);
    int height = (int) Math.ceil(drawing.heightMm() * DOTS_PER_MM);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.scale(DOTS_PER_MM, DOTS_PER_MM);
    drawing.drawOn(new GraphicsPaper(graphics));
    graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.setUseCache(false);
      ImageIO.write(image, "png", bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
