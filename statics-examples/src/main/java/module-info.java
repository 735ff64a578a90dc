/** Device files and the command line of Bellcrank. */
@org.jspecify.annotations.NullMarked
module bellcrank.examples {
  requires transitive bellcrank.statics;
  requires com.fasterxml.jackson.core;
  requires com.fasterxml.jackson.dataformat.yaml;
  requires com.samskivert.jmustache;
  requires VectorGraphics2D;
  requires info.picocli;
  requires java.desktop;
  requires org.knowm.xchart;
  requires org.yaml.snakeyaml;
  requires static org.jspecify;

  exports bellcrank.examples.file;
  exports bellcrank.examples.harness;

  // picocli fills in the command's fields
  opens bellcrank.examples to
      info.picocli;

  // the templates read the fields of these records
  opens bellcrank.examples.sheet to
      com.samskivert.jmustache;
}
