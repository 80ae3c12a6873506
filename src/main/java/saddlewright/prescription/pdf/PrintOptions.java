package saddlewright.prescription.pdf;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.dentition.Notation;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Palette;

/**
 * How a prescription is printed.
 *
 * @param date the day it is made; stands in the document and in its metadata
 * @param notation how teeth are numbered
 * @param palette colours of the drawing, such as {@link Palette#MONO} for a printer without
 * @param paper what it is printed on
 * @param signs what is marked on the drawing, such as {@link
 *     saddlewright.prescription.FindingSign#callouts}
 * @param patient whose case it is, for a slip of its own; empty when nobody is to be named
 * @param letterhead the practice's own picture at the head of the first page
 */
public record PrintOptions(
    LocalDate date,
    Notation notation,
    Palette palette,
    Paper paper,
    List<Callout> signs,
    Optional<PatientIdentity> patient,
    Optional<Letterhead> letterhead) {
  public PrintOptions {
    Objects.requireNonNull(date);
    Objects.requireNonNull(notation);
    Objects.requireNonNull(palette);
    Objects.requireNonNull(paper);
    Objects.requireNonNull(letterhead);
    signs = List.copyOf(signs);
    patient = patient.filter(p -> !p.isEmpty());
  }

  /** In colour on A4, teeth numbered by ISO 3950, nothing marked on the drawing, nobody named. */
  public static PrintOptions on(LocalDate date) {
    return new PrintOptions(
        date, Notation.FDI, Palette.PAPER, Paper.A4, List.of(), Optional.empty(), Optional.empty());
  }

  public PrintOptions with(LocalDate other) {
    return new PrintOptions(other, notation, palette, paper, signs, patient, letterhead);
  }

  public PrintOptions with(Notation other) {
    return new PrintOptions(date, other, palette, paper, signs, patient, letterhead);
  }

  public PrintOptions with(Palette other) {
    return new PrintOptions(date, notation, other, paper, signs, patient, letterhead);
  }

  public PrintOptions with(Paper other) {
    return new PrintOptions(date, notation, palette, other, signs, patient, letterhead);
  }

  public PrintOptions withSigns(List<Callout> other) {
    return new PrintOptions(date, notation, palette, paper, other, patient, letterhead);
  }

  public PrintOptions withPatient(Optional<PatientIdentity> other) {
    return new PrintOptions(date, notation, palette, paper, signs, other, letterhead);
  }

  public PrintOptions withLetterhead(Optional<Letterhead> other) {
    return new PrintOptions(date, notation, palette, paper, signs, patient, other);
  }
}
