package org.draftingmaths.lessons.kernel;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Map;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * Runs snippets in this very JVM and keeps the object each one yields, where JShell itself hands on only its text. The
 * local control, unlike the direct one, can stop an endless loop.
 */
final class CellControl extends LocalExecutionControl {
    private static final InheritableThreadLocal<CellControl> RUNNING = new InheritableThreadLocal<>();
    private static final Method RELAY = relayMethod();

    private volatile boolean stopRequested;
    private Method snippet;
    private Object value;

    /** Forgets an earlier request to stop. */
    void begin() {
        stopRequested = false;
    }

    /** From now on no snippet starts. The running one is ended by {@link #stop()}. */
    void requestStop() {
        stopRequested = true;
    }

    boolean stopRequested() {
        return stopRequested;
    }

    /** The object that the last snippet yielded; asked once, so that the control does not keep it alive. */
    Object takeValue() {
        Object taken = value;
        value = null;
        return taken;
    }

    @Override
    public void load(ClassBytecodes[] classes)
            throws ClassInstallException, NotImplementedException, EngineTerminationException {
        super.load(Arrays.stream(classes)
                .map(c -> new ClassBytecodes(c.name(), ExitGuard.guard(c.bytecodes())))
                .toArray(ClassBytecodes[]::new));
    }

    @Override
    protected String invoke(Method snippetMethod) throws Exception {
        snippet = snippetMethod;
        value = null;
        RUNNING.set(this);
        try {
            return super.invoke(RELAY);
        } finally {
            RUNNING.remove();
        }
    }

    /**
     * What the local control calls in the fresh thread instead of the snippet. Looking at the request here closes the
     * gap in which a stop finds no thread yet. The object is kept, not returned: JShell would call its toString.
     */
    static Object relay() throws Throwable {
        CellControl control = RUNNING.get();
        if (control.stopRequested) {
            return null;
        }
        try {
            control.value = control.snippet.invoke(null);
            return null;
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private static Method relayMethod() {
        try {
            Method method = CellControl.class.getDeclaredMethod("relay");
            // Without this every snippet silently does nothing.
            method.setAccessible(true);
            return method;
        } catch (NoSuchMethodException e) {
            throw new AssertionError("the relay method is declared in this class", e);
        }
    }

    /** Hands this control to JShell. */
    ExecutionControlProvider provider() {
        return new ExecutionControlProvider() {
            @Override
            public String name() {
                return "cells";
            }

            @Override
            public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
                return CellControl.this;
            }
        };
    }
}
