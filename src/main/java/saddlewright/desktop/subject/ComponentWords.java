package saddlewright.desktop.subject;

import java.util.Locale;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentVisitor;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.Plating;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.design.TissueStop;
import saddlewright.design.UnknownComponent;
import saddlewright.desktop.Words;

/** The names by which components and other subjects are called in the window. */
public final class ComponentWords implements ComponentVisitor<String> {
  private static final ComponentWords WORDS = new ComponentWords();

  private ComponentWords() {}

  /** Such as "Rest 35 mesial occlusal". */
  public static String full(Component c) {
    return c.accept(WORDS);
  }

  /** Only the sort of component, such as "Rest". */
  public static String brief(Component c) {
    return Words.of("kind." + c.getClass().getSimpleName());
  }

  /** The name of any subject; components are looked up in the design of their arch. */
  public static String of(Subject subject, saddlewright.casefile.Case c) {
    if (subject instanceof Subject.OfComponent s) {
      return c.design(s.arch()).find(s.id()).map(ComponentWords::full).orElse(s.id().value());
    }
    if (subject instanceof Subject.OfTooth t) {
      return t.tooth() + " " + ToothNames.full(t.tooth());
    }
    if (subject instanceof Subject.OfArea a) {
      return Words.of("subject.area", a.span());
    }
    return Words.of("subject.arch." + subject.arch().code());
  }

  @Override
  public String saddle(Saddle c) {
    return kind(c) + " " + c.span();
  }

  @Override
  public String rest(Rest c) {
    return kind(c) + " " + c.tooth() + " " + ToothNames.site(c.site());
  }

  @Override
  public String clasp(Clasp c) {
    return Words.of(c.form()) + " " + c.tooth() + ", " + ToothNames.zone(c.tooth(), c.tip());
  }

  @Override
  public String reciprocalArm(ReciprocalArm c) {
    return kind(c) + " " + c.tooth() + " " + ToothNames.face(c.tooth(), c.face());
  }

  @Override
  public String guidePlate(GuidePlate c) {
    return kind(c) + " " + c.tooth() + " " + ToothNames.end(c.end());
  }

  @Override
  public String guidePlane(GuidePlane c) {
    return kind(c) + " " + c.tooth() + " " + Words.of(c.surface()).toLowerCase(Locale.ROOT);
  }

  @Override
  public String plating(Plating c) {
    return kind(c) + " " + c.span();
  }

  @Override
  public String minorConnector(MinorConnector c) {
    return kind(c) + " " + c.tooth() + ", " + Words.of(c.place()).toLowerCase(Locale.ROOT);
  }

  @Override
  public String majorConnector(MajorConnector c) {
    return Words.of(c.form()) + " " + c.span();
  }

  @Override
  public String retentionMesh(RetentionMesh c) {
    return kind(c) + " " + c.span();
  }

  @Override
  public String finishLine(FinishLine c) {
    return kind(c) + " " + c.span();
  }

  @Override
  public String tissueStop(TissueStop c) {
    return kind(c) + " " + tooth(c.tooth());
  }

  @Override
  public String backing(Backing c) {
    return kind(c) + " " + tooth(c.tooth());
  }

  @Override
  public String postDam(PostDam c) {
    return Words.of(c.extent());
  }

  @Override
  public String relief(Relief c) {
    return Words.of(c.area()) + " " + Words.mm(c.thickness());
  }

  @Override
  public String note(Note c) {
    return kind(c) + " “" + c.text() + "”";
  }

  @Override
  public String unknown(UnknownComponent c) {
    return Words.of("kind.UnknownComponent") + " (" + c.kind() + ")";
  }

  private static String kind(Component c) {
    return brief(c);
  }

  private static String tooth(Tooth t) {
    return Span.of(t).toString();
  }
}
