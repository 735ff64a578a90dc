package bellcrank.examples.file;

import bellcrank.statics.strength.Section;

/** A cross-section as a file states it. */
public sealed interface SectionStatement permits FormedSection, OwnSection {

  /**
   * The section.
   *
   * @return its properties
   */
  Section section();
}
