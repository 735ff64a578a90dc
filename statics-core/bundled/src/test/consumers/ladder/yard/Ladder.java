package yard;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import java.util.List;
import java.util.Locale;

/** A picking ladder: linear equations, linear programs and a drawing. */
public final class Ladder {
  private Ladder() {}

  public static void main(String[] args) {
    Device ladder =
        Device.named("picking ladder")
            .point("foot", 0, 0)
            .point("middle", 0.75, 1.8)
            .point("rung", 1, 2.4)
            .point("top", 1.5, 3.6)
            .member("ladder", "foot", "top")
            .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, 0.35, 0.35))
            .connect(new Contact("boards", "top", "ladder", "ground", Direction.LEFT, 0, 0))
            .force("own weight", "ladder", "middle", Vector.of(0, -120))
            .force("picker", "ladder", "rung", Vector.of(0, -720))
            .build();
    Balance balance = Balance.of(ladder);
    System.out.printf(Locale.ROOT, "boards %.1f N%n", balance.number("boards.normal").orElseThrow());
    if (Limits.of(ladder).limit(Variation.place("picker", "foot", "top"))
            instanceof Limit.Between climb
        && climb.greatest() instanceof Limit.End.At end) {
      System.out.printf(Locale.ROOT, "climb %.3f m%n", end.value());
    }
    String picture = FreeBodyDrawing.of(balance, List.of("ladder")).svg();
    System.out.println("picture " + picture.contains("</svg>"));
  }
}
