package org.midlateral.document.drawing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The structure tree of a PDF: one element a block, in reading order. */
final class PdfTags {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement whole = new PDStructureElement("Document", root);
  private final Map<Integer, PDParentTreeValue> parents = new LinkedHashMap<>();
  private final List<PDStructureElement> onPage = new ArrayList<>();

  PdfTags(PDDocument document) {
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    document.getDocumentCatalog().setMarkInfo(marked);
    document.getDocumentCatalog().setStructureTreeRoot(root);
    root.appendKid(whole);
  }

  /** Begins a block's marked content; the caller ends it. */
  void open(PDPageContentStream content, PDPage page, Page.Block block) throws IOException {
    PDStructureElement element = new PDStructureElement(block.role().tag(), whole);
    element.setPage(page);
    if (!block.description().isEmpty()) {
      element.setAlternateDescription(block.description());
    }
    int number = onPage.size();
    element.getCOSObject().setItem(COSName.K, COSInteger.get(number));
    whole.appendKid(element);
    onPage.add(element);
    content.beginMarkedContent(COSName.getPDFName(block.role().tag()), number);
  }

  void endPage(PDPage page) {
    COSArray elements = new COSArray();
    onPage.forEach(element -> elements.add(element.getCOSObject()));
    onPage.clear();
    page.setStructParents(parents.size());
    parents.put(parents.size(), new PDParentTreeValue(elements));
  }

  void close() {
    PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
    tree.setNumbers(parents);
    root.setParentTree(tree);
    root.setParentTreeNextKey(parents.size());
  }
}
