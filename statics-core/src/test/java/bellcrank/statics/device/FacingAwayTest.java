package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.geometry.Direction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A crate on a table, both with outlines. */
class FacingAwayTest {

  private static DeviceBuilder crate(Direction push, String body, String other) {
    return Device.named("crate on a table")
        .point("a", 0, 1)
        .point("b", 1, 1)
        .point("c", 1, 2)
        .point("d", 0, 2)
        .point("e", -1, 1)
        .point("f", 2, 1)
        .point("g", 2, 0)
        .point("h", -1, 0)
        .point("middle", 0.5, 1)
        .member(new Member("crate", List.of(), List.of(), List.of("a", "b", "c", "d"), 1))
        .member(new Member("table", List.of(), List.of(), List.of("e", "f", "g", "h"), 1))
        .connect(new Contact("lid", "middle", body, other, push, 0.3, 0.2));
  }

  @Test
  void aPushIntoTheBodyIsRight() {
    assertThatCode(() -> crate(Direction.UP, "crate", "table").build()).doesNotThrowAnyException();
    assertThatCode(() -> crate(Direction.DOWN, "table", "crate").build())
        .doesNotThrowAnyException();
    assertThatCode(() -> crate(Direction.RIGHT, "crate", "table").build())
        .as("along the edge an outline says nothing for certain")
        .doesNotThrowAnyException();
  }

  @Test
  void aPushOutOfTheBodyIsRefused() {
    assertThatThrownBy(() -> crate(Direction.DOWN, "crate", "table").build())
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "lid: push is out of crate; wanted: the direction into crate: that of the normal force"
                + " on the first body");
  }

  @Test
  void aPushIntoTheBodyThatPushesIsRefused() {
    assertThatThrownBy(() -> crate(Direction.UP, "table", "crate").build())
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("lid: push is out of table");
    Device crate =
        Device.named("crate")
            .point("a", 0, 1)
            .point("b", 1, 1)
            .point("c", 1, 2)
            .point("d", 0, 2)
            .point("middle", 0.5, 1)
            .member(new Member("crate", List.of(), List.of(), List.of("a", "b", "c", "d"), 1))
            .member("stick", "middle")
            .connect(new Contact("tip", "middle", "stick", "crate", Direction.DOWN, 0.3, 0.2))
            .build();
    assertThat(crate.connections()).hasSize(1);
    assertThatThrownBy(
            () ->
                Device.named("crate")
                    .point("a", 0, 1)
                    .point("b", 1, 1)
                    .point("c", 1, 2)
                    .point("d", 0, 2)
                    .point("middle", 0.5, 1)
                    .member(
                        new Member("crate", List.of(), List.of(), List.of("a", "b", "c", "d"), 1))
                    .member("stick", "middle")
                    .connect(new Contact("tip", "middle", "stick", "crate", Direction.UP, 0.3, 0.2))
                    .build())
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("tip: push is into crate; wanted: the direction out of crate");
  }
}
