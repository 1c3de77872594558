package zonewright.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/** A file that is being written. */
public final class DiskFile implements Closeable {
  private final FileChannel channel;
  private final Path created;

  DiskFile(FileChannel channel, Path created) {
    this.channel = channel;
    this.created = created;
  }

  /** Returns the name it was created under. */
  public Path created() {
    return created;
  }

  void write(byte[] bytes, int from, int count) throws IOException {
    ByteBuffer left = ByteBuffer.wrap(bytes, from, count);
    while (left.hasRemaining()) {
      channel.write(left);
    }
  }

  void force() throws IOException {
    channel.force(true);
  }

  /** Returns how many bytes it has. */
  public long length() throws IOException {
    return channel.size();
  }

  /** Cuts it to a length, so that nothing half written is left at its end. */
  public void cut(long length) throws IOException {
    channel.truncate(length);
    channel.position(length);
  }

  /** Gives it up: it may be somebody else's now. */
  @Override
  public void close() throws IOException {
    Claims.givenUp(channel);
    channel.close();
  }
}
