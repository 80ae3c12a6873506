package saddlewright.desktop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseCodec;

/** The demo cases that come with the program. */
final class DemoCases {
  private static final String FOLDER = "/saddlewright/demo-cases/";

  private DemoCases() {}

  /** All of them in the order of their index. */
  static List<Case> all() {
    List<Case> out = new ArrayList<>();
    for (String name : index()) {
      try (InputStream in = DemoCases.class.getResourceAsStream(FOLDER + name)) {
        if (in != null) {
          out.add(CaseCodec.fromBytes(in.readAllBytes(), name));
        }
      } catch (IOException | CaseFileException e) {
        // One damaged demo must not take the welcome page down.
        System.err.println("saddlewright: demo case " + name + ": " + e.getMessage());
      }
    }
    return out;
  }

  private static List<String> index() {
    try (InputStream in = DemoCases.class.getResourceAsStream(FOLDER + "index.txt")) {
      if (in == null) {
        return List.of();
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .map(String::strip)
          .filter(l -> !l.isEmpty())
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }
}
