package saddlewright.prescription.pdf.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Scanner;

/**
 * What the JDK's PostScript printer is sent, read back: the boxes of what is filled on each page,
 * and the page as dots where it came as a picture. Lengths in points from the bottom left corner.
 *
 * <p>It knows the few words that the prologue of that printer defines (M, L, C, P, WC, WF, EF, G,
 * R, and concat), and the encodings of its pictures, by the PostScript Language Reference, 3rd
 * edition: ASCII base-85 (3.13.3) and run lengths.
 */
final class PrintedPostScript {
  /** Dots of a page that came as a picture: dark or not, by rows from the top. */
  record Dots(int width, List<boolean[]> rows) {
    boolean isDark(int x, int y) {
      return rows.get(y)[x];
    }
  }

  private final List<String> pages = new ArrayList<>();

  PrintedPostScript(byte[] bytes) {
    String all = new String(bytes, StandardCharsets.ISO_8859_1);
    String[] parts = all.split("(?m)^%%Page: .*$");
    for (int i = 1; i < parts.length; i++) {
      pages.add(parts[i]);
    }
    sizes(all);
  }

  private final List<double[]> sizes = new ArrayList<>();

  private void sizes(String all) {
    var m = java.util.regex.Pattern.compile("/PageSize \\[([0-9.]+) ([0-9.]+)\\]").matcher(all);
    while (m.find()) {
      sizes.add(new double[] {Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))});
    }
  }

  int pages() {
    return pages.size();
  }

  /** The paper that is asked for, in points. */
  List<double[]> sheets() {
    return sizes;
  }

  boolean isPicture(int page) {
    return pages.get(page).contains("colorimage");
  }

  /** Boxes of everything that is filled on a page. */
  List<Rectangle2D> filled(int page) {
    List<Rectangle2D> out = new ArrayList<>();
    Deque<AffineTransform> kept = new ArrayDeque<>();
    AffineTransform now = new AffineTransform();
    Path2D path = new Path2D.Double();
    List<Double> n = new ArrayList<>();
    for (String token : tokens(pages.get(page))) {
      if (token.matches("[-0-9.].*")) {
        n.add(Double.parseDouble(token));
        continue;
      }
      int k = n.size();
      switch (token) {
        case "div" -> {
          double q = n.get(k - 2) / n.get(k - 1);
          n.remove(k - 1);
          n.set(k - 2, q);
          continue;
        }
        case "exch" -> {
          n.add(k - 2, n.remove(k - 1));
          continue;
        }
        case "translate" -> now.translate(n.get(k - 2), n.get(k - 1));
        case "scale" -> now.scale(n.get(k - 2), n.get(k - 1));
        case "concat" ->
            now.concatenate(
                new AffineTransform(
                    n.stream().skip(k - 6L).mapToDouble(Double::doubleValue).toArray()));
        case "G" -> kept.push(new AffineTransform(now));
        case "R" -> now = kept.pop();
        case "N" -> path = new Path2D.Double();
        case "M", "L" -> {
          double[] p = {n.get(k - 2), n.get(k - 1)};
          now.transform(p, 0, p, 0, 1);
          if (token.equals("M")) {
            path.moveTo(p[0], p[1]);
          } else {
            path.lineTo(p[0], p[1]);
          }
        }
        case "C" -> {
          double[] p = n.stream().skip(k - 6L).mapToDouble(Double::doubleValue).toArray();
          now.transform(p, 0, p, 0, 3);
          path.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
        }
        case "WF", "EF" -> out.add(path.getBounds2D());
        default -> {
          // Colours, clips and the saving of pages do not move anything.
        }
      }
      n.clear();
    }
    return out;
  }

  private static List<String> tokens(String page) {
    List<String> out = new ArrayList<>();
    try (Scanner s = new Scanner(page.replace("[", " ").replace("]", " "))) {
      while (s.hasNext()) {
        out.add(s.next());
      }
    }
    return out;
  }

  /** A page that came as a picture, in bands of full width, three bytes for a dot. */
  Dots dots(int page) {
    String text = pages.get(page);
    List<boolean[]> rows = new ArrayList<>();
    int width = 0;
    var band =
        java.util.regex.Pattern.compile(
                "(?m)^(\\d+) (\\d+) 8\\[[^\\]]*\\]/imageSrc load false 3 colorimage$")
            .matcher(text);
    while (band.find()) {
      width = Integer.parseInt(band.group(1));
      int height = Integer.parseInt(band.group(2));
      String data = text.substring(band.end());
      int at = 0;
      int top = rows.size();
      // Each row is a file of its own, ended by the mark of base-85; a band goes upwards.
      for (int y = 0; y < height; ) {
        int end = data.indexOf("~>", at);
        byte[] rgb = runs(base85(data.substring(at, end)));
        at = end + 2;
        for (int i = 0; i + 3 * width <= rgb.length; i += 3 * width, y++) {
          boolean[] row = new boolean[width];
          for (int x = 0; x < width; x++) {
            int p = i + 3 * x;
            row[x] = (rgb[p] & 255) + (rgb[p + 1] & 255) + (rgb[p + 2] & 255) < 3 * 128;
          }
          rows.add(top, row);
        }
      }
    }
    return new Dots(width, rows);
  }

  private static byte[] base85(String text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    long value = 0;
    int count = 0;
    for (char c : text.toCharArray()) {
      if (c == 'z' && count == 0) {
        out.writeBytes(new byte[4]);
      } else if (c >= '!' && c <= 'u') {
        value = value * 85 + (c - '!');
        if (++count == 5) {
          put(out, value, 4);
          value = 0;
          count = 0;
        }
      }
    }
    if (count > 1) {
      for (int i = count; i < 5; i++) {
        value = value * 85 + 84;
      }
      put(out, value, count - 1);
    }
    return out.toByteArray();
  }

  private static void put(ByteArrayOutputStream out, long value, int bytes) {
    for (int i = 0; i < bytes; i++) {
      out.write((int) (value >> (24 - 8 * i)));
    }
  }

  private static byte[] runs(byte[] in) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < in.length; ) {
      int n = in[i++] & 255;
      if (n == 128) {
        break;
      }
      if (n < 128) {
        out.write(in, i, Math.min(n + 1, in.length - i));
        i += n + 1;
      } else {
        for (int k = 0; k < 257 - n; k++) {
          out.write(in[i]);
        }
        i++;
      }
    }
    return out.toByteArray();
  }
}
