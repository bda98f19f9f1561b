package org.fettlebench.product;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads which bundles the parent pom builds. */
final class Reactor {
  private Reactor() {}

  /** Returns the names of the folders under bundles/ among the parent's modules. */
  static Set<String> bundles(Path pom) throws IOException {
    try {
      NodeList modules =
          DocumentBuilderFactory.newDefaultInstance()
              .newDocumentBuilder()
              .parse(pom.toFile())
              .getElementsByTagName("module");
      Set<String> folders = new TreeSet<>();
      for (int at = 0; at < modules.getLength(); at++) {
        String module = modules.item(at).getTextContent().strip();
        if (module.startsWith("bundles/")) {
          folders.add(module.substring("bundles/".length()));
        }
      }
      return folders;
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(pom + " cannot be read", e);
    }
  }
}
