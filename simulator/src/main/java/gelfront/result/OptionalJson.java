// SPDX-License-Identifier: Apache-2.0
package gelfront.result;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What may be absent as its value or null. */
final class OptionalJson {
  private OptionalJson() {}

  static SimpleModule module() {
    SimpleModule m = new SimpleModule("optionals");
    m.addSerializer(new Write());
    m.addDeserializer(Optional.class, new Read(null));
    return m;
  }

  private static final class Write extends StdSerializer<Optional<?>> {
    private static final long serialVersionUID = 1;

    Write() {
      super(Optional.class, false);
    }

    @Override
    public void serialize(Optional<?> value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      provider.defaultSerializeValue(value.orElse(null), out);
    }
  }

  @SuppressWarnings("rawtypes") // Jackson asks for the class, which knows no parameter
  private static final class Read extends JsonDeserializer<Optional>
      implements ContextualDeserializer {
    private final @Nullable JavaType held;

    Read(@Nullable JavaType held) {
      this.held = held;
    }

    @Override
    public JsonDeserializer<?> createContextual(DeserializationContext c, BeanProperty property) {
      return new Read(c.getContextualType().containedType(0));
    }

    @Override
    public Optional deserialize(JsonParser in, DeserializationContext c) throws IOException {
      return Optional.of(c.readValue(in, held));
    }

    @Override
    public Optional getNullValue(DeserializationContext c) {
      return Optional.empty();
    }
  }
}
