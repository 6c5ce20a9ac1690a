// SPDX-License-Identifier: Apache-2.0
package gelfront.mesh.io;

import gelfront.mesh.MeshException;
import java.nio.ByteBuffer;

/** Numbers of a PLY body, one after another. */
interface PlyValues {
  /**
   * @throws MeshException where the file ends or the word is no number
   */
  double next(PlyHeader.Type type);

  /** Bytes that aren't read yet. */
  long remaining();

  MeshException error(String what);

  /** A body of words. */
  record Text(Words words) implements PlyValues {
    @Override
    public double next(PlyHeader.Type type) {
      return words.number();
    }

    @Override
    public long remaining() {
      return words.remaining();
    }

    @Override
    public MeshException error(String what) {
      return words.error(what);
    }
  }

  /** A body of bytes in the buffer's order. */
  record Bytes(ByteBuffer body) implements PlyValues {
    @Override
    public double next(PlyHeader.Type type) {
      if (body.remaining() < type.bytes) {
        throw error("the file is cut short");
      }
      double v =
          switch (type) {
            case INT8 -> body.get();
            case UINT8 -> body.get() & 0xFF;
            case INT16 -> body.getShort();
            case UINT16 -> body.getShort() & 0xFFFF;
            case INT32 -> body.getInt();
            case UINT32 -> Integer.toUnsignedLong(body.getInt());
            case FLOAT32 -> body.getFloat();
            case FLOAT64 -> body.getDouble();
          };
      return v;
    }

    @Override
    public long remaining() {
      return body.remaining();
    }

    @Override
    public MeshException error(String what) {
      return new MeshException("byte " + body.position() + ": " + what);
    }
  }
}
