package saddlewright.prescription.pdf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/** The logical structure of the document, by which it can be read aloud in order. */
final class Tags {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement document = new PDStructureElement("Document", root);
  private final Map<PDPage, COSArray> contents = new LinkedHashMap<>();

  Tags() {
    root.appendKid(document);
  }

  PDStructureElement document() {
    return document;
  }

  /** A new element of a standard type under another. */
  PDStructureElement under(PDStructureNode parent, String type) {
    PDStructureElement e = new PDStructureElement(type, parent);
    parent.appendKid(e);
    return e;
  }

  /** A cell that heads the columns over which it stands. */
  PDStructureElement columnHead(PDStructureNode row, int columns) {
    PDStructureElement e = under(row, "TH");
    PDTableAttributeObject a = new PDTableAttributeObject();
    a.setScope(PDTableAttributeObject.SCOPE_COLUMN);
    if (columns > 1) {
      a.setColSpan(columns);
    }
    e.getCOSObject().setItem(COSName.A, a.getCOSObject());
    return e;
  }

  /**
   * A picture with the words that stand for it.
   *
   * @param box around it on its page, in points from the bottom left corner
   */
  PDStructureElement figure(PDStructureNode parent, String words, PDRectangle box) {
    PDStructureElement e = under(parent, "Figure");
    e.setAlternateDescription(words);
    PDLayoutAttributeObject a = new PDLayoutAttributeObject();
    a.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
    a.setBBox(box);
    e.getCOSObject().setItem(COSName.A, a.getCOSObject());
    return e;
  }

  /** The number by which the next content on the page belongs to the element. */
  int mark(PDStructureElement element, PDPage page) {
    COSArray onPage = contents.computeIfAbsent(page, p -> new COSArray());
    int id = onPage.size();
    onPage.add(element);
    PDMarkedContentReference reference = new PDMarkedContentReference();
    reference.setPage(page);
    reference.setMCID(id);
    element.appendKid(reference);
    return id;
  }

  /** Writes the structure into the document once all pages are made. */
  void into(PDDocument target) {
    Map<Integer, COSArray> byNumber = new TreeMap<>();
    contents.forEach(
        (page, onPage) -> {
          page.setStructParents(byNumber.size());
          page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
          byNumber.put(byNumber.size(), onPage);
        });
    COSArray numbers = new COSArray();
    byNumber.forEach(
        (n, onPage) -> {
          numbers.add(COSInteger.get(n));
          numbers.add(onPage);
        });
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, numbers);
    root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
    root.setParentTreeNextKey(byNumber.size());
    target.getDocumentCatalog().setStructureTreeRoot(root);
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    target.getDocumentCatalog().setMarkInfo(marked);
  }
}
