declare module '*.typ?raw' {
  const text: string;
  export default text;
}
