/** The usual cautions of the trade, by id; their words are made where they are shown. */
export const CAUTION_IDS = ['backflow', 'tank', 'digging', 'codes', 'promise'] as const;

export type CautionId = (typeof CAUTION_IDS)[number];
