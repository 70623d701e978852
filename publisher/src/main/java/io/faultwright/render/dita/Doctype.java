package io.faultwright.render.dita;

/** Kinds of DITA documents, with their public identifiers. */
enum Doctype {
  TOPIC("topic", "Topic", ".dita"),
  TROUBLESHOOTING("troubleshooting", "Troubleshooting", ".dita"),
  MAP("map", "Map", ".ditamap");

  private final String root;
  private final String name;
  private final String ending;

  Doctype(String root, String name, String ending) {
    this.root = root;
    this.name = name;
    this.ending = ending;
  }

  /** The element of the whole document. */
  String root() {
    return root;
  }

  /** How a file of this kind is called. */
  String ending() {
    return ending;
  }

  String declaration() {
    return "<!DOCTYPE %s PUBLIC \"-//OASIS//DTD DITA 1.3 %s//EN\" \"%s.dtd\">\n"
        .formatted(root, name, root);
  }
}
