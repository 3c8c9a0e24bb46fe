package org.draftingmaths.lessons.kernel;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Redirects {@code System.exit} in the classes of a cell to a method that throws, because a cell shares its JVM with
 * the kernel and with the tests. The call is one entry of the constant pool (Java Virtual Machine Specification, section
 * 4.4): its class is changed, the code is not touched. {@code Runtime.exit} and {@code halt} stay what they are.
 */
public final class ExitGuard {
    private static final int UTF8 = 1;
    private static final int CLASS = 7;
    private static final int METHOD = 10;
    private static final int NAME_AND_TYPE = 12;
    private static final int POOL_COUNT_AT = 8;
    private static final int POOL_AT = 10;

    private final ByteBuffer file;
    private final int[] at;
    private final int end;

    private ExitGuard(byte[] classFile) {
        file = ByteBuffer.wrap(classFile.clone());
        at = new int[Short.toUnsignedInt(file.getShort(POOL_COUNT_AT))];
        int position = POOL_AT;
        for (int i = 1; i < at.length; i++) {
            at[i] = position;
            int tag = file.get(position);
            position += sizeOf(tag, position);
            i += tag == 5 || tag == 6 ? 1 : 0; // a long or a double takes two numbers
        }
        end = position;
    }

    /**
     * Stands in for {@link System#exit(int)} in a cell.
     *
     * @param status named in the message
     * @throws IllegalStateException always
     */
    @SuppressWarnings("DoNotCallSuggester") // called by the rewritten classes of cells
    public static void exit(int status) {
        throw new IllegalStateException("System.exit(" + status + ") in a cell would end the kernel: it was not done");
    }

    /** The class file with its calls of {@code System.exit} redirected, or the same bytes when it has none. */
    static byte[] guard(byte[] classFile) {
        ExitGuard guard = new ExitGuard(classFile);
        int call = guard.exitCall();
        return call == 0 ? classFile : guard.redirect(call);
    }

    private int sizeOf(int tag, int position) {
        return switch (tag) {
            case UTF8 -> 3 + Short.toUnsignedInt(file.getShort(position + 1));
            case CLASS, 8, 16, 19, 20 -> 3;
            case 15 -> 4;
            case 3, 4, 9, METHOD, 11, NAME_AND_TYPE, 17, 18 -> 5;
            case 5, 6 -> 9;
            default -> throw new IllegalArgumentException("unknown constant tag " + tag + " at byte " + position);
        };
    }

    private int exitCall() {
        for (int i = 1; i < at.length; i++) {
            if (at[i] != 0 && file.get(at[i]) == METHOD && isExit(i)) {
                return i;
            }
        }
        return 0;
    }

    private boolean isExit(int method) {
        int nameAndType = at[index(at[method] + 3)];
        return utf8(index(at[index(at[method] + 1)] + 1)).equals("java/lang/System")
                && utf8(index(nameAndType + 1)).equals("exit")
                && utf8(index(nameAndType + 3)).equals("(I)V");
    }

    private byte[] redirect(int call) {
        byte[] name = ExitGuard.class.getName().replace('.', '/').getBytes(StandardCharsets.UTF_8);
        file.putShort(POOL_COUNT_AT, (short) (at.length + 2));
        file.putShort(at[call] + 1, (short) (at.length + 1));
        ByteBuffer result = ByteBuffer.allocate(file.capacity() + name.length + 6);
        result.put(file.array(), 0, end);
        result.put((byte) UTF8).putShort((short) name.length).put(name);
        result.put((byte) CLASS).putShort((short) at.length);
        result.put(file.array(), end, file.capacity() - end);
        return result.array();
    }

    private int index(int position) {
        return Short.toUnsignedInt(file.getShort(position));
    }

    private String utf8(int entry) {
        return new String(file.array(), at[entry] + 3, index(at[entry] + 1), StandardCharsets.UTF_8);
    }
}
