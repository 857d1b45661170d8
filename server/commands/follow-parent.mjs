/** Loaded before the server: when the command that started it is killed, the server drains and ends instead of holding its port. */
import { isMainThread } from 'node:worker_threads'

if (isMainThread && process.channel) {
  const end = () => {
    process.kill(process.pid, 'SIGTERM')
    setTimeout(() => process.exit(1), 10_000).unref()
  }
  process.on('disconnect', end)
  // Listening must not keep a drained server alive.
  process.channel.unref()
  if (!process.connected) end()
}
