package lungfish.roomfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The steps of a save, handed in so that a test can make each of them fail. */
interface Disk {
    Disk REAL = new Disk() {};

    /** Hands everything to the system and goes on: what is handed over outlives the program, but not a power cut. */
    Disk HASTY = new Disk() {
        @Override
        public void force(FileChannel channel) {}

        @Override
        public void settle(Path folder) {}
    };

    /** Files left behind by saves that were cut off; with more of them something else is wrong. */
    int MOST_LEFT_BEHIND = 1000;

    /** Makes an empty file that nobody else has, in the same folder and so on the same disk, with the usual rights. */
    default Path fresh(Path folder, String name) throws IOException {
        for (int number = 0; ; number++) {
            try {
                return Files.createFile(folder.resolve("." + name + "." + number + ".saving"));
            } catch (FileAlreadyExistsException e) {
                if (number >= MOST_LEFT_BEHIND) {
                    throw e;
                }
            }
        }
    }

    /** Writes all bytes and waits until the disk has them. */
    default void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            force(channel);
        }
    }

    /** Waits until the disk has all that was written. */
    default void force(FileChannel channel) throws IOException {
        channel.force(true);
    }

    /** Puts one file in the place of another in one step. */
    default void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Waits until the disk has the folder's new entry. */
    default void settle(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    default void discard(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
