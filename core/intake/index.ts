export { openFile, projectText } from './open-file'
