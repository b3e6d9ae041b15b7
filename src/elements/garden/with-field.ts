/** The same object with one optional field set, or left out where the value is undefined. */
export function withField<T extends object, K extends keyof T>(object: T, key: K, value: T[K] | undefined): T {
  if (value !== undefined) return { ...object, [key]: value };
  const { [key]: _, ...rest } = object;
  return rest as T;
}
