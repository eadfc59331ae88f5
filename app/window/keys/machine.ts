/** Whether the keyboard is a Mac's: Cmd then stands for Ctrl, and shortcuts are written its way. */
export const isMac = /mac/i.test(navigator.platform)
