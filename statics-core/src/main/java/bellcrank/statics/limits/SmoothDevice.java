package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceDraft;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Wrap;
import java.util.List;

/**
 * A device whose contacts slide and whose ropes run without friction, so that its free motion is
 * the one in which it gives way.
 */
final class SmoothDevice {

  private SmoothDevice() {}

  static Device of(Device device) {
    DeviceDraft draft = DeviceDraft.of(device);
    device.connections().forEach(one -> draft.connection(smooth(one)));
    return draft.build();
  }

  private static Connection smooth(Connection one) {
    if (one instanceof Contact c) {
      return new Contact(c.name(), c.at(), c.body(), c.other(), c.push(), 0, 0);
    }
    if (one instanceof ContactBase b) {
      return new ContactBase(b.name(), b.at(), b.body(), b.other(), b.push(), b.width(), 0, 0);
    }
    if (one instanceof Wrap wrap) {
      Stop post = wrap.post();
      Stop sheave = Stop.sheave(post.body(), post.at(), post.radius(), post.turn());
      List<Stop> stops = List.of(wrap.first(), sheave, wrap.last());
      return new Reeving(wrap.name(), stops, 1, Reeving.Hauling.IDEAL);
    }
    return one;
  }
}
