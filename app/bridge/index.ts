export { bridgeName, channels, menuCommands } from './bridge'
export type {
  About,
  Bridge,
  HostFile,
  HostNews,
  Kept,
  KeptCopy,
  MenuCommand,
  Paper,
  Read,
  RecentFile,
  Written,
} from './bridge'
