import bellcrank.statics.device.Device

/** Hands nothing over where the library wants a name. */
fun nothing(name: String?): Device = Device.named(name).build()
