export * from './domain.ts'
export * from './constants.ts'
