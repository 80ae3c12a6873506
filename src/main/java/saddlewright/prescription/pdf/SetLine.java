package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;

/**
 * Words of one line as they are set: in the order in which they are seen, letters joined, each in
 * the face that has it.
 */
final class SetLine {
  private static final COSName SPAN = COSName.getPDFName("Span");

  /** Letters that follow each other in one face. */
  private record Piece(Face face, String letters) {}

  private final String words;
  private final boolean asWritten;
  private final List<Piece> pieces;

  private SetLine(String words, boolean asWritten, List<Piece> pieces) {
    this.words = words;
    this.asWritten = asWritten;
    this.pieces = pieces;
  }

  /** A line of words that {@link TypeFace#printable} has passed. */
  static SetLine of(String words) {
    if (isPlain(words)) {
      return new SetLine(words, true, List.of(new Piece(Face.LIBERATION_SANS, words)));
    }
    String joined = JoinedLetters.isNeeded(words) ? JoinedLetters.joined(words) : words;
    String seen =
        Directions.turns(joined) ? Directions.asSeen(joined) : Directions.withoutSigns(joined);
    String read = Directions.withoutSigns(words);
    return new SetLine(read, seen.equals(read), pieces(seen));
  }

  /** Whether all letters are in the first face, none turns and none is unseen. */
  private static boolean isPlain(String words) {
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      boolean leftToRight = c < 0x0590 || c >= 0x1E00 && c < 0x3000 && !Directions.isSign(c);
      if (!leftToRight || !Face.LIBERATION_SANS.has(c)) {
        return false;
      }
    }
    return true;
  }

  private static List<Piece> pieces(String seen) {
    List<Piece> out = new ArrayList<>();
    StringBuilder letters = new StringBuilder();
    Face face = Face.LIBERATION_SANS;
    for (int i = 0; i < seen.length(); ) {
      int c = seen.codePointAt(i);
      Face next = Face.of(c).orElse(Face.LIBERATION_SANS);
      if (next != face && letters.length() > 0) {
        out.add(new Piece(face, letters.toString()));
        letters.setLength(0);
      }
      face = next;
      letters.appendCodePoint(c);
      i += Character.charCount(c);
    }
    if (letters.length() > 0) {
      out.add(new Piece(face, letters.toString()));
    }
    return out;
  }

  /** As a share of the em. */
  double width(Weight weight) {
    double sum = 0;
    for (Piece p : pieces) {
      Cut cut = p.face().cut(weight);
      for (int i = 0; i < p.letters().length(); ) {
        int c = p.letters().codePointAt(i);
        sum += cut.advance(c);
        i += Character.charCount(c);
      }
    }
    return sum;
  }

  /** As it is seen from left to right. */
  String seen() {
    StringBuilder out = new StringBuilder();
    pieces.forEach(p -> out.append(p.letters()));
    return out.toString();
  }

  /**
   * Sets the line in a text that has been begun. What is not set as it is written says how it is
   * written, so that who copies or hears it gets the words.
   */
  void show(PDPageContentStream out, TypeFace type, Weight weight, double size) throws IOException {
    if (!asWritten) {
      COSDictionary actual = new COSDictionary();
      actual.setString(COSName.ACTUAL_TEXT, words);
      // The library loses such dictionaries when it packs objects together.
      actual.setDirect(true);
      out.beginMarkedContent(SPAN, PDPropertyList.create(actual));
    }
    for (Piece p : pieces) {
      out.setFont(type.font(p.face(), weight), (float) size);
      out.showText(p.letters());
    }
    if (!asWritten) {
      out.endMarkedContent();
    }
  }
}
