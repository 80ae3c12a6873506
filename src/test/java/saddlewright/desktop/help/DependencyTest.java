package saddlewright.desktop.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Holds the list of other people's work to what really comes with the program. */
class DependencyTest {

  @Test
  void every_library_of_the_runtime_class_path_is_named_and_no_other() throws Exception {
    Set<String> named =
        Dependency.ALL.stream()
            .flatMap(d -> d.artifacts().stream())
            .filter(a -> !a.startsWith("/"))
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(named).isEqualTo(runtime());
  }

  @Test
  void every_font_and_profile_that_is_packed_is_named() throws Exception {
    Set<String> named =
        Dependency.ALL.stream()
            .flatMap(d -> d.artifacts().stream())
            .filter(a -> a.startsWith("/"))
            .collect(Collectors.toCollection(TreeSet::new));
    Path resources = Path.of("src/main/resources");
    try (Stream<Path> all = Files.walk(resources)) {
      Set<String> packed =
          all.map(p -> "/" + resources.relativize(p).toString().replace('\\', '/'))
              .filter(p -> p.matches(".*\\.(ttf|otf|icc)"))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(packed).isEqualTo(named);
    }
  }

  @Test
  void every_licence_is_named_with_an_address_or_its_words() {
    assertThat(Dependency.ALL)
        .allSatisfy(
            d -> {
              assertThat(d.licence()).isNotBlank();
              assertThat(URI.create(d.address()).getHost()).isNotBlank();
              d.text()
                  .ifPresent(
                      t -> assertThat(DependencyTest.class.getResource(t)).as(t).isNotNull());
            });
  }

  @Test
  void the_version_is_the_one_that_is_built() throws Exception {
    String pom = Files.readString(Path.of("pom.xml"));
    // The first one is the program's own; a build without filtering leaves the mark of it.
    String version = pom.replaceFirst("(?s).*?<version>([^<]+)</version>.*", "$1");

    assertThat(AboutPane.version()).isIn(version, "${project.version}");
  }

  /**
   * What the pom names without test scope, and what those name in turn, as far as it is on the
   * class path.
   */
  private static Set<String> runtime() throws Exception {
    Map<String, Path> jars = jars();
    Set<String> out = new TreeSet<>();
    Deque<String> open = new ArrayDeque<>();
    Map<String, Boolean> direct = dependencies(Path.of("pom.xml"));
    direct.keySet().forEach(open::push);
    while (!open.isEmpty()) {
      String artifact = open.pop();
      if (!jars.containsKey(artifact) || !out.add(artifact)) {
        continue;
      }
      boolean alone = direct.getOrDefault(artifact, false);
      if (!alone) {
        Path jar = jars.get(artifact);
        String version = jar.getParent().getFileName().toString();
        dependencies(jar.resolveSibling(artifact + "-" + version + ".pom"))
            .keySet()
            .forEach(open::push);
      }
    }
    return out;
  }

  /** Jars of the class path by artifact, as a local repository lays them. */
  private static Map<String, Path> jars() {
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Map<String, Path> out = new LinkedHashMap<>();
    for (String entry : path.split(File.pathSeparator)) {
      if (entry.endsWith(".jar")) {
        Path jar = Path.of(entry);
        Path artifact = jar.getParent() == null ? null : jar.getParent().getParent();
        if (artifact != null && artifact.getFileName() != null) {
          out.putIfAbsent(artifact.getFileName().toString(), jar);
        }
      }
    }
    return out;
  }

  /** Artifacts that a pom needs at run time, and whether it takes them without theirs. */
  private static Map<String, Boolean> dependencies(Path pom) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Document doc = factory.newDocumentBuilder().parse(pom.toFile());
    Map<String, Boolean> out = new LinkedHashMap<>();
    NodeList all = doc.getElementsByTagName("dependency");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      String above = e.getParentNode().getParentNode().getNodeName();
      String scope = child(e, "scope");
      if (above.equals("project")
          && List.of("", "compile", "runtime").contains(scope)
          && !child(e, "optional").equals("true")) {
        out.put(child(e, "artifactId"), e.getElementsByTagName("exclusions").getLength() > 0);
      }
    }
    return out;
  }

  private static String child(Element e, String name) {
    NodeList all = e.getChildNodes();
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i).getNodeName().equals(name)) {
        return all.item(i).getTextContent().strip();
      }
    }
    return "";
  }
}
