/** Freezes a value with all that hangs on it; a map refuses to be changed. Typed arrays cannot be frozen and are left. */
export function deepFrozen<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value) || Object.isFrozen(value)) return value;
  const parts = value instanceof Map ? [...value.keys(), ...value.values()] : Object.values(value);
  if (value instanceof Map) Object.assign(value, { set: refuse, delete: refuse, clear: refuse });
  Object.freeze(value);
  parts.forEach(deepFrozen);
  return value;
}

function refuse(): never {
  throw new TypeError('a frozen map was changed');
}
