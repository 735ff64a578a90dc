package bellcrank.statics.drawing;

/**
 * The look of the pictures. Colours are of the palette by Okabe and Ito (2008) that most people who
 * see colours differently can tell apart, some darkened for contrast. What a colour tells is told
 * by the shape of the head or by dashes as well.
 */
final class Stylesheet {

  private static final String SHAPES =
      """
      text{font:13px system-ui,'Segoe UI','Helvetica Neue',Arial,'Noto Sans',sans-serif;\
      text-anchor:middle;fill:#1a1a1a;\
      paint-order:stroke;stroke:#fff;stroke-width:3px;stroke-linejoin:round}
      .left text,text.left{text-anchor:start}
      .title text{font-weight:600}
      .body-name text{font-style:italic;fill:#4d4d4d}
      .measure text,.note text{fill:#4d4d4d}
      path,circle{fill:none;stroke:#1a1a1a;stroke-width:1.4;stroke-linecap:round;\
      stroke-linejoin:round}
      .paper{fill:#fff;stroke:none}
      .rim{stroke-width:9}
      .core{stroke:#e9e9e9;stroke-width:6}
      .plate{fill:#e9e9e9;stroke-width:1.6}
      .stub{stroke:#8a8a8a;stroke-width:4}
      .ground-line{stroke-width:2}
      .hatch{stroke-width:.9}
      .rope{stroke-width:2;stroke-dasharray:9 2;stroke-linecap:butt}
      .sheave,.hole{fill:#fff}
      .dot{fill:#1a1a1a;stroke:none}
      .ghost{stroke:#9a9a9a;stroke-width:1.2}
      .path-of{stroke:#9a9a9a;stroke-dasharray:1.5 4;stroke-width:2}
      .action{stroke:#6b6b6b;stroke-width:1;stroke-dasharray:10 3 2 3;stroke-linecap:butt}
      .measure path,path.measure,.leader{stroke:#6b6b6b;stroke-width:.9}
      .extension{stroke:#b0b0b0;stroke-width:.7}
      .tick{stroke:#4d4d4d;stroke-width:1.8}
      .shaft{stroke-width:2.4;stroke-linecap:butt}
      .head{stroke-width:1.4;stroke-linejoin:miter}
      .load .shaft,.weight .shaft{stroke:#b84a00;stroke-width:3.2}
      .load .head,.weight .head{stroke:#b84a00;fill:#b84a00}
      .connection .shaft{stroke:#0072b2}
      .connection .head{stroke:#0072b2;fill:#fff}
      .sought .shaft{stroke:#00785a}
      .sought .head{stroke:#00785a;fill:#00785a}
      .open .shaft{stroke-dasharray:6 4}
      .strip .area{stroke:none;fill:#b84a00;fill-opacity:.14}
      .strip .shaft{stroke-width:1.1}
      .strip .edge{stroke:#b84a00;stroke-width:1.2}
      .strip.sought .area{fill:#00785a}
      .strip.sought .edge{stroke:#00785a}
      .pressure .area{fill:#0072b2}
      .pressure .edge{stroke:#0072b2}
      .wedge{stroke:#0072b2;fill:#fff}
      .bar{fill:#0072b2;fill-opacity:.22;stroke:#0072b2}
      .over .bar{fill:#b84a00;stroke:#b84a00;stroke-width:2;stroke-dasharray:6 3}
      .bar-hatch{stroke:#b84a00;stroke-width:1.1}
      .limit-line{stroke-width:2.4}
      .axis-line{stroke:#b0b0b0;stroke-width:.9}
      .motion .shaft{stroke:#8a3d78;stroke-width:1.8;stroke-dasharray:2 3}
      .motion .head{stroke:#8a3d78}
      """;

  private static final String DARK =
      """
      @media (prefers-color-scheme:dark){
      text{fill:#f0f0f0;stroke:#15181b}
      .body-name text,.measure text,.note text{fill:#c4c4c4}
      path,circle{stroke:#f0f0f0}
      .paper{fill:#15181b;stroke:none}
      .core{stroke:#3a4046}
      .plate{fill:#3a4046}
      .sheave,.hole{fill:#15181b}
      .dot{fill:#f0f0f0}
      .ghost,.path-of{stroke:#7d858c}
      .action,.measure path,path.measure,.leader{stroke:#9aa2a9}
      .extension{stroke:#5d656c}
      .tick{stroke:#c4c4c4}
      .load .shaft,.weight .shaft{stroke:#ff9a57}
      .load .head,.weight .head{stroke:#ff9a57;fill:#ff9a57}
      .connection .shaft{stroke:#63bdf2}
      .connection .head{stroke:#63bdf2;fill:#15181b}
      .sought .shaft{stroke:#35d1a5}
      .sought .head{stroke:#35d1a5;fill:#35d1a5}
      .strip .area{stroke:none;fill:#ff9a57}
      .strip .edge{stroke:#ff9a57}
      .pressure .area{fill:#63bdf2}
      .pressure .edge{stroke:#63bdf2}
      .wedge{stroke:#63bdf2;fill:#15181b}
      .bar{fill:#63bdf2;stroke:#63bdf2}
      .over .bar{fill:#ff9a57;stroke:#ff9a57}
      .bar-hatch{stroke:#ff9a57}
      .axis-line{stroke:#5d656c}
      .motion .shaft,.motion .head{stroke:#e3a6d3}
      }
      """;

  private Stylesheet() {}

  static String text() {
    return SHAPES + DARK;
  }
}
