package saddlewright.desktop.prescription;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;

/**
 * The days that stages took in the case that was planned last, kept in the user's configuration
 * folder: they are offered, never assumed.
 */
final class LastDays {
  private final Path file;
  private final Map<TreatmentStage, Integer> days = new EnumMap<>(TreatmentStage.class);

  LastDays(Path file) {
    this.file = file;
    Properties p = new Properties();
    try (var in = Files.newBufferedReader(file)) {
      p.load(in);
    } catch (IOException | IllegalArgumentException e) {
      // Nothing kept yet, or not readable: there is nothing to offer.
      p.clear();
    }
    for (TreatmentStage s : TreatmentStage.values()) {
      String text = p.getProperty(s.name(), "");
      if (text.matches("\\d{1,3}")) {
        days.put(s, Integer.valueOf(text));
      }
    }
  }

  /** The plan with the days of the last case where it has none. */
  StagePlan into(StagePlan plan) {
    StagePlan out = plan;
    for (Map.Entry<TreatmentStage, Integer> e : days.entrySet()) {
      if (out.at(e.getKey()).days().isEmpty()) {
        out = out.with(e.getKey(), out.at(e.getKey()).withDays(Optional.of(e.getValue())));
      }
    }
    return out;
  }

  /** Keeps the days of a plan for the next case; what it does not set is kept as it was. */
  void keep(StagePlan plan) {
    Map<TreatmentStage, Integer> before = Map.copyOf(days);
    for (TreatmentStage s : TreatmentStage.values()) {
      plan.at(s).days().ifPresent(n -> days.put(s, n));
    }
    if (days.equals(before)) {
      return;
    }
    StringBuilder out = new StringBuilder();
    days.forEach((s, n) -> out.append(s.name()).append('=').append(n).append('\n'));
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      AtomicFile.write(file, out.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException | CaseFileException e) {
      // Convenience only: where it cannot be kept, the work goes on without it.
      System.err.println("saddlewright: " + file + " cannot be written: " + e.getMessage());
    }
  }
}
