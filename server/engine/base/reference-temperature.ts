/** Temperature at which every dimension of a drawing holds, °C (ISO 1). */
export const REFERENCE_TEMPERATURE = 20;
